#!/usr/bin/env dotnet
#:project HortiCalc.Pictures/HortiCalc.Pictures.csproj
#:property PublishAot=false

// Draws the pictures of docs/frost-and-light.md. Run after a change of what they show:
//     dotnet run docs/tools/draw-frost-and-light.cs

using HortiCalc.Pictures;

File.WriteAllText(FrostDatesPicture.FilePath, FrostDatesPicture.Write());
File.WriteAllText(FrostNightPicture.FilePath, FrostNightPicture.Write());
File.WriteAllText(DayLengthPicture.FilePath, DayLengthPicture.Write());
Console.WriteLine("Wrote frost-dates.svg, frost-night.svg and day-length.svg into docs/images.");
