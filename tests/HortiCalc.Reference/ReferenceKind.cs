namespace HortiCalc.Reference;

public enum ReferenceKind
{
    Published,
    CommonPractice,
    Computed,
}
