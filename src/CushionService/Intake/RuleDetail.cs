using CushionService.Engine.Messages;

namespace CushionService.Intake;

/// <summary>What one of FluentValidation's rules says where it is broken: the state of its failure.</summary>
/// <param name="Message">What is wrong, and what would be right.</param>
/// <param name="Range">The range that the value broke; null where none applies.</param>
internal sealed record RuleDetail(Message Message, FindingRange? Range = null);
