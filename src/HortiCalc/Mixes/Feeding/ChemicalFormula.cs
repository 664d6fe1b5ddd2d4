using System.Globalization;

namespace HortiCalc.Mixes;

/// <summary>Reads a formula such as <c>Ca(NO3)2.4H2O</c>: the atoms and the molar mass.</summary>
internal static class ChemicalFormula
{
    public static double GramsPerMole(string formula)
    {
        double sum = 0;
        foreach ((string symbol, double count) in Atoms(formula))
            sum += count * AtomicWeights.Of(symbol);
        return sum;
    }

    /// <exception cref="FormatException">The text is not a formula of the elements that are known.</exception>
    public static Dictionary<string, double> Atoms(string formula)
    {
        Dictionary<string, double> atoms = new(StringComparer.Ordinal);
        foreach (string part in formula.Split('.', '·'))
        {
            int at = 0;
            double times = Count(part, ref at);
            if (at == part.Length)
                throw Unreadable(formula);
            Read(part, ref at, times, atoms, nested: false);
        }

        return atoms;
    }

    private static void Read(string text, ref int at, double times, Dictionary<string, double> atoms, bool nested)
    {
        while (at < text.Length)
        {
            if (text[at] == ')')
            {
                if (!nested)
                    throw Unreadable(text);
                return;
            }

            if (text[at] == '(')
            {
                at++;
                Dictionary<string, double> group = new(StringComparer.Ordinal);
                Read(text, ref at, 1, group, nested: true);
                if (at >= text.Length)
                    throw Unreadable(text);
                at++;
                double repeated = Count(text, ref at);
                foreach ((string symbol, double count) in group)
                    Add(atoms, symbol, count * repeated * times);
                continue;
            }

            if (!char.IsAsciiLetterUpper(text[at]))
                throw Unreadable(text);
            int start = at++;
            while (at < text.Length && char.IsAsciiLetterLower(text[at]))
                at++;
            string element = text[start..at];
            if (!AtomicWeights.Knows(element))
                throw Unreadable(text);
            Add(atoms, element, Count(text, ref at) * times);
        }

        if (nested)
            throw Unreadable(text);
    }

    private static double Count(string text, ref int at)
    {
        int start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        return at == start ? 1 : double.Parse(text[start..at], NumberStyles.None, CultureInfo.InvariantCulture);
    }

    private static void Add(Dictionary<string, double> atoms, string symbol, double count) =>
        atoms[symbol] = atoms.GetValueOrDefault(symbol) + count;

    private static FormatException Unreadable(string formula) =>
        new($"'{formula}' is not a formula such as 'Ca(NO3)2.4H2O' of the elements of fertilisers.");
}
