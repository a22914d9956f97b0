using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>What people call a piece: its cushion's label and its part, or else its id.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Label">The label of its cushion; null for a cushion without one, and for a piece of the maker's own.</param>
/// <param name="Part">What it becomes.</param>
public readonly record struct PieceName(string Id, string? Label, PartName Part) : INamed
{
    /// <inheritdoc />
    public bool HasGiven => true;

    /// <inheritdoc />
    public Message ToMessage() => SizeTexts.PieceName(Label, Part, Id);

    /// <summary>The name as answers carry it: the part by its name, in no language.</summary>
    public override string ToString() => Label is null ? Id : $"{Label}, {Part}";
}
