using CushionService.Engine.Messages;

namespace CushionService.Engine.Specifications;

/// <summary>One way in which an order breaks a rule, or, as a warning, is unwise.</summary>
/// <param name="Pointer">Where in the order, as a JSON Pointer (RFC 6901); empty for the order as a whole.</param>
/// <param name="Code">A stable word for programs, in kebab case.</param>
/// <param name="Detail">What is wrong, and what would be right. It is put into words where the answer is made.</param>
/// <param name="Minimum">The smallest allowed value, in the order's units; null where no range applies.</param>
/// <param name="Maximum">The largest allowed value, in the order's units; null where no range applies.</param>
public sealed record Violation(string Pointer, string Code, Message Detail, double? Minimum = null, double? Maximum = null);
