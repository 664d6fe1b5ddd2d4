#!/usr/bin/env dotnet
#:project HortiCalc.Pictures/HortiCalc.Pictures.csproj
#:property PublishAot=false

// Draws the picture of docs/containers-water-and-air.md. Run after a change of what it shows:
//     dotnet run docs/tools/draw-containers.cs

using HortiCalc.Pictures;

File.WriteAllText(ContainerWaterPicture.FilePath, ContainerWaterPicture.Write());
Console.WriteLine("Wrote container-water.svg into docs/images.");
