using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;

namespace CushionService.Engine.Tests.Cutting;

/// <summary>A face's cut size and the line that explains it agree, whatever the unit, the step and the rounding (follows from the
/// definitions of up and nearest).</summary>
public sealed class FaceRoundingFacts
{
    public static TheoryData<LengthUnit, decimal, FaceRounding> Roundings()
    {
        var all = new TheoryData<LengthUnit, decimal, FaceRounding>();
        foreach (FaceRounding rounding in Enum.GetValues<FaceRounding>())
        {
            all.Add(LengthUnit.Inch, 0.0625m, rounding);
            all.Add(LengthUnit.Inch, 0.125m, rounding);
            all.Add(LengthUnit.Inch, 0.25m, rounding);
            all.Add(LengthUnit.Centimetre, 0.1m, rounding);
            all.Add(LengthUnit.Centimetre, 0.5m, rounding);
            all.Add(LengthUnit.Millimetre, 1, rounding);
            all.Add(LengthUnit.Millimetre, 5, rounding);
        }

        return all;
    }

    [Theory]
    [MemberData(nameof(Roundings))]
    public void What_is_cut_is_what_the_line_says(LengthUnit unit, decimal step, FaceRounding rounding)
    {
        Length cuttingStep = Length.From(step, unit);
        var writer = new MessageWriter(Language.English, unit);
        for (decimal size = 30; size < 31.5m; size += 0.03m)
        {
            WorkroomPractice practice = WorkroomPractice.Of(unit) with { CuttingStep = cuttingStep, FaceRounding = rounding };
            Length width = Length.From(unit == LengthUnit.Millimetre ? size * 10 : size, unit);
            CushionSpecification cushion = KnifeEdge(1, 1, HandSewn) with
            {
                Outline = new RectangleOutline(width, width),
                SeamAllowance = practice.SeamAllowance,
            };
            CutPiece top = Drafting.Of(Order(cushion) with { Unit = unit, Workroom = practice }).Pieces[0];

            Length exact = width + 2 * practice.SeamAllowance;
            Assert.Equal(0, top.Width.Nanometres % cuttingStep.Nanometres);
            Assert.InRange(
                (top.Width - exact).Nanometres,
                rounding == FaceRounding.Up ? 0 : -cuttingStep.Nanometres / 2,
                rounding == FaceRounding.Up ? cuttingStep.Nanometres - 1 : cuttingStep.Nanometres / 2
            );
            string line = writer.Text(Derivation.Of(top)),
                side = line[..line.IndexOf(" by ", StringComparison.Ordinal)];
            Assert.Equal(top.Width > exact, side.Contains(", up to ", StringComparison.Ordinal));
            Assert.Equal(top.Width < exact, side.Contains(", down to ", StringComparison.Ordinal));
            if (top.Width != exact)
            {
                Assert.EndsWith($" to {LengthText.Format(top.Width, unit)}", side, StringComparison.Ordinal);
            }
        }
    }
}
