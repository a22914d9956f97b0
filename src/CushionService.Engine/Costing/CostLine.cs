using CushionService.Engine.Materials;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Costing;

/// <summary>One line of a cost.</summary>
/// <param name="Material">What is bought.</param>
/// <param name="UnitPrice">Price of one unit.</param>
/// <param name="CutFee">What cutting it costs besides; null for nothing.</param>
/// <param name="Amount">Quantity × price, rounded half up to the smallest coin, and the cut fee.</param>
public sealed record CostLine(Material Material, Money UnitPrice, Money? CutFee, Money Amount);
