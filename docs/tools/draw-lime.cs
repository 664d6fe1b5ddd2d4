#!/usr/bin/env dotnet
#:project HortiCalc.Pictures/HortiCalc.Pictures.csproj
#:property PublishAot=false

// Draws the picture of docs/how-much-lime.md. Run after a change of what it shows:
//     dotnet run docs/tools/draw-lime.cs

using HortiCalc.Pictures;

File.WriteAllText(LimePicture.FilePath, LimePicture.Write());
Console.WriteLine("Wrote lime-methods.svg into docs/images.");
