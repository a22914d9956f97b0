namespace CushionService.Engine.Measures;

/// <summary>How finely a workroom gives lengths (common practice, no source).</summary>
public static class Fineness
{
    private static readonly Length InInches = Length.FromInches(1 / 64m),
        InMillimetres = Length.FromMillimetres(0.1m);

    /// <summary>1/64 in for inches and yards, else 0.1 mm.</summary>
    /// <param name="unit">What lengths are given in.</param>
    public static Length Of(LengthUnit unit) => unit is LengthUnit.Inch or LengthUnit.Yard ? InInches : InMillimetres;
}
