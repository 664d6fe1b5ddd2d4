#!/usr/bin/env dotnet
#:project HortiCalc.Pictures/HortiCalc.Pictures.csproj
#:property PublishAot=false

// Draws the picture of docs/beds-and-containers.md. Run after a change of what it shows:
//     dotnet run docs/tools/draw-beds.cs

using HortiCalc.Pictures;

File.WriteAllText(BedPlanPicture.FilePath, BedPlanPicture.Write());
Console.WriteLine("Wrote bed-plan.svg into docs/images.");
