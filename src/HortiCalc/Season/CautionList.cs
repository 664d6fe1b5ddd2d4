using HortiCalc.Evidence;

namespace HortiCalc.Season;

/// <summary>Gathers cautions, each once, with all that it applies to; the gravest come first.</summary>
internal sealed class CautionList
{
    private readonly Dictionary<Caution, List<string>> places = [];

    public IReadOnlyList<CautionLine> Lines =>
    [
        .. places.OrderByDescending(pair => pair.Key.Level).Select(pair => new CautionLine(pair.Key, pair.Value)),
    ];

    public void Add(string place, IEnumerable<Caution> cautions)
    {
        foreach (Caution caution in cautions)
        {
            if (!places.TryGetValue(caution, out List<string>? known))
                places[caution] = known = [];
            if (!known.Contains(place))
                known.Add(place);
        }
    }
}
