namespace HortiCalc.Reference;

public enum ReferenceStatus
{
    Agrees,
    SourceInconsistent,
    KnownDisagreement,
}
