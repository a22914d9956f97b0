using System.Collections.Immutable;
using System.Globalization;
using CushionService.Engine.Messages;

namespace CushionService.Engine.Instructions;

/// <summary>A tool, and the steps that ask for it.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Steps">The numbers of the steps, from 1, rising; at least one.</param>
public sealed record ToolUse(Tool Tool, ImmutableArray<int> Steps)
{
    /// <summary>What it is for.</summary>
    public Message For => ToolTexts.Purpose(Tool, Steps.Length, [.. Steps.Select(step => step.ToString(CultureInfo.InvariantCulture))]);

    /// <summary>The tools of an order's steps: each once, in the order in which they are first needed.</summary>
    /// <param name="steps">The steps.</param>
    public static ImmutableArray<ToolUse> Of(IReadOnlyList<Step> steps) =>
        [
            .. steps
                .SelectMany((step, i) => StepTools.Of(step.Text).Distinct().Select(tool => (Tool: tool, Step: i + 1)))
                .GroupBy(use => use.Tool)
                .Select(uses => new ToolUse(uses.Key, [.. uses.Select(use => use.Step)])),
        ];
}
