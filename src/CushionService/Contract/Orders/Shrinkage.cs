namespace CushionService.Contract.Orders;

/// <summary>The share of its size that a fabric loses when it is washed before cutting.</summary>
public sealed record Shrinkage
{
    /// <summary>Along the fabric, as a fraction (0.03 is 3 %); 0 when left out.</summary>
    [NumberRange(0, 0.3, Default = "0")]
    public double? Length { get; init; }

    /// <summary>Across the fabric, as a fraction; 0 when left out.</summary>
    [NumberRange(0, 0.3, Default = "0")]
    public double? Width { get; init; }
}
