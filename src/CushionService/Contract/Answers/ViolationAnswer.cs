namespace CushionService.Contract.Answers;

/// <summary>One way in which an order breaks a rule, or, as a warning, is unwise.</summary>
/// <param name="Pointer">Where in the order, as a JSON Pointer (RFC 6901); empty for the order as a whole.</param>
/// <param name="Code">A stable word for programs, in kebab case.</param>
/// <param name="Detail">A sentence for people.</param>
/// <param name="Minimum">The smallest allowed value, in the order's units; null where no range applies.</param>
/// <param name="Maximum">The largest allowed value, in the order's units; null where no range applies.</param>
public sealed record ViolationAnswer(string Pointer, string Code, string Detail, double? Minimum = null, double? Maximum = null);
