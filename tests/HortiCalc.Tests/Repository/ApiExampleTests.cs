using System.Xml.Linq;

namespace HortiCalc.Tests.Repository;

/// <summary>The examples in the XML documentation compile against the public library.</summary>
public class ApiExampleTests
{
    private const string Usings = """
        using System.Globalization;
        using System.Text.Json;
        using HortiCalc.Beds;
        using HortiCalc.Climate;
        using HortiCalc.Containers;
        using HortiCalc.Display;
        using HortiCalc.Evidence;
        using HortiCalc.Json;
        using HortiCalc.Mixes;
        using HortiCalc.Plants;
        using HortiCalc.Season;
        using HortiCalc.Soil;
        using HortiCalc.Units;
        using UnitsNet;
        using UnitsNet.Units;

        """;

    private static readonly XDocument Documentation = XDocument.Load(Path.Combine(AppContext.BaseDirectory, "HortiCalc.xml"));

    public static TheoryData<string> Members() => [.. Documentation.Descendants("member")
        .Where(member => member.Descendants("example").Any())
        .Select(member => member.Attribute("name")!.Value)];

    [Theory]
    [MemberData(nameof(Members))]
    public void Example_InTheDocumentation_Compiles(string member)
    {
        IEnumerable<string> codes = Documentation.Descendants("member").Single(entry => entry.Attribute("name")!.Value == member)
            .Descendants("example").Select(example => example.Descendants("code").Single().Value);

        Assert.All(codes, code => Assert.Empty(ExampleProgram.Problems(Usings + code)));
    }
}
