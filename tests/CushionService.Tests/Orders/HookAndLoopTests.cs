using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Engine.Messages;
using CushionService.Wording;

namespace CushionService.Tests.Orders;

/// <summary>Strips cut as high as the other sides overlap by T + 2s − 4f: a shortcut that is right from a certain height on, and refused
/// below it (follows from each strip being cut (T + o)/2 + s + 2f high; the sizes are common practice, no source).</summary>
public sealed class HookAndLoopTests
{
    [Theory]
    [InlineData(2, "1/2", 3, 3)]
    [InlineData(4, "1/2", 5, 4)]
    [InlineData(4, "1", 5, 5)]
    [InlineData(5, "1", 6, 5.5)]
    public void Strips_by_their_overlap(double thickness, string fold, double sides, double strips)
    {
        PiecesAnswer answer = Pieces(thickness, fold, "by-overlap");

        Assert.Equal(sides, Height(answer, "front"));
        Assert.Equal([strips, strips], [Height(answer, "closure-upper"), Height(answer, "closure-lower")]);
    }

    [Theory]
    [InlineData(2, "1/2", 1)]
    [InlineData(4, "1", 1)]
    [InlineData(5, "1", 2)]
    public void The_shortcut_cuts_strips_as_high_as_the_sides(double thickness, string fold, double overlap)
    {
        PiecesAnswer answer = Pieces(thickness, fold, "as-sides");

        Assert.Equal(
            [Height(answer, "front"), Height(answer, "front")],
            [Height(answer, "closure-upper"), Height(answer, "closure-lower")]
        );
        Assert.Contains(answer.Seams, seam => seam.Lap == overlap);
    }

    [Theory]
    [InlineData(
        1.875,
        "1/2",
        "overlap by 7/8 in on a boxing of 1 7/8 in. They need 1 in, the tape's width and 1/8 in at each edge: a boxing of 2 in or more."
    )]
    [InlineData(
        1,
        "1/2",
        "overlap by 0 in on a boxing of 1 in. They need 1 in, the tape's width and 1/8 in at each edge: a boxing of 2 in or more."
    )]
    [InlineData(
        3,
        "1",
        "overlap by 0 in on a boxing of 3 in. They need 1 in, the tape's width and 1/8 in at each edge: a boxing of 4 in or more."
    )]
    [InlineData(
        2,
        "1",
        "overlap by -1 in on a boxing of 2 in. They need 1 in, the tape's width and 1/8 in at each edge: a boxing of 4 in or more."
    )]
    public void Below_its_limit_the_shortcut_is_a_violation_and_never_a_wrong_strip(double thickness, string fold, string words)
    {
        Outcome<PiecesAnswer> outcome = Ask(thickness, fold, "as-sides");
        ViolationAnswer violation = Assert.Single(
            ViolationWording.Of(outcome.Refusal!, Language.English),
            violation => violation.Pointer == "/cushions/0/closure/strips"
        );

        Assert.Equal("overlap-too-narrow", violation.Code);
        Assert.Contains(words, violation.Detail, StringComparison.Ordinal);
        Assert.Equal(1, violation.Minimum);
    }

    private static PiecesAnswer Pieces(double thickness, string fold, string strips) => Ask(thickness, fold, strips).Answer!;

    private static double Height(PiecesAnswer answer, string part) => answer.Pieces.Single(piece => piece.Id == $"seat/{part}").Length;

    private static Outcome<PiecesAnswer> Ask(double thickness, string fold, string strips)
    {
        string overlap = strips == "by-overlap" ? "\"overlap\": 1," : "";
        Order order = SampleOrder.Changed(
            FormattableString.Invariant(
                $$"""
                {
                  "/cushions/0/thickness": {{thickness}},
                  "/cushions/0/closure": { "kind": "hook-and-loop", {{overlap}} "fold": "{{fold}}", "strips": "{{strips}}" },
                  "/cushions/0/handle/width": "1/2"
                }
                """
            )
        );
        return new OrderDesk().Handle(new(order, []), Purposes.Pieces, CancellationToken.None);
    }
}
