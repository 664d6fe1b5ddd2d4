#!/usr/bin/env dotnet
#:project ../../tests/HortiCalc.Reference/HortiCalc.Reference.csproj
#:property PublishAot=false

// Writes docs/validation.md from the published values of shared/reference. Run after a change of either:
//     dotnet run docs/tools/write-validation.cs

using HortiCalc.Reference;

File.WriteAllText(ValidationPage.FilePath, ValidationPage.Write());
Console.WriteLine($"Wrote docs/validation.md from {ReferenceLibrary.Values.Count} values.");
