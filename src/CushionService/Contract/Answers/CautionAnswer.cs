namespace CushionService.Contract.Answers;

/// <summary>A caution that applies.</summary>
/// <param name="Code">A stable word for programs.</param>
/// <param name="Text">A sentence for people.</param>
public sealed record CautionAnswer(string Code, string Text);
