using CushionService.Engine.Messages;

namespace CushionService.Engine.Instructions;

/// <summary>A caution that applies to an order.</summary>
/// <param name="Code">A stable word for programs, in kebab case.</param>
/// <param name="Text">A sentence for people; it defers to local codes and licensed practice.</param>
public sealed record Caution(string Code, Message Text);
