namespace HortiCalc.Display;

/// <summary>A result that can show itself as a small table. The result supplies the lines; this room renders them.</summary>
internal interface IDisplayable
{
    DisplayBlock ToDisplay(TextStyle style);
}
