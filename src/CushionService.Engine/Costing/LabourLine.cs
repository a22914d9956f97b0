using CushionService.Engine.Measures;

namespace CushionService.Engine.Costing;

/// <summary>The workroom's time for one operation on one line of cushions.</summary>
/// <param name="Cushion">The cushion's id.</param>
/// <param name="Operation">The operation's word.</param>
/// <param name="Times">How often it is done, over all cushions made the same, at least 1.</param>
/// <param name="Minutes">Minutes that it takes in all.</param>
/// <param name="Amount">What they cost, rounded half up to the smallest coin.</param>
public sealed record LabourLine(string Cushion, string Operation, int Times, decimal Minutes, Money Amount);
