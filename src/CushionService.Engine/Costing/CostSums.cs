using CushionService.Engine.Measures;

namespace CushionService.Engine.Costing;

/// <summary>What additions are computed from.</summary>
/// <param name="Materials">What the materials cost, fabric among them.</param>
/// <param name="Fabric">What the fabric costs.</param>
/// <param name="Labour">What the labour costs.</param>
/// <param name="Minutes">How long it takes.</param>
/// <param name="Cushions">How many cushions are made.</param>
/// <param name="Cuts">How many lengths of fabric are cut from bolts.</param>
internal sealed record CostSums(Money Materials, Money Fabric, Money Labour, decimal Minutes, int Cushions, int Cuts);
