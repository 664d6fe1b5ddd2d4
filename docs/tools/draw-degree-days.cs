#!/usr/bin/env dotnet
#:project HortiCalc.Pictures/HortiCalc.Pictures.csproj
#:property PublishAot=false

// Draws the picture of docs/degree-days.md and writes its table of yearly sums. Run after a change of a method:
//     dotnet run docs/tools/draw-degree-days.cs

using HortiCalc.Pictures;

File.WriteAllText(DegreeDayPicture.FilePath, DegreeDayPicture.Write());
File.WriteAllText(DegreeDayArticle.FilePath, DegreeDayArticle.WithTable(File.ReadAllText(DegreeDayArticle.FilePath)));
Console.WriteLine("Wrote docs/images/degree-day-methods.svg and the yearly sums of docs/degree-days.md.");
