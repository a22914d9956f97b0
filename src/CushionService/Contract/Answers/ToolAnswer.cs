using CushionService.Engine.Instructions;

namespace CushionService.Contract.Answers;

/// <summary>A tool that the steps ask for.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="For">What it is for, with the numbers of the steps.</param>
public sealed record ToolAnswer(Tool Tool, string For);
