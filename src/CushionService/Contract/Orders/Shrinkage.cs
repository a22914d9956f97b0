namespace CushionService.Contract.Orders;

/// <summary>The share of its size that a cloth loses when it is washed before cutting.</summary>
public sealed record Shrinkage
{
    /// <summary>Along the cloth, as a fraction (0.03 is 3 %); 0 when left out.</summary>
    [NumberRange(0, 0.3, Default = "0")]
    public double? Length { get; init; }

    /// <summary>Across the cloth, as a fraction; 0 when left out.</summary>
    [NumberRange(0, 0.3, Default = "0")]
    public double? Width { get; init; }
}
