using System.Globalization;
using System.Text.RegularExpressions;
using CushionService.Contract.Answers;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Practices;
using CushionService.Tests.Hosting;
using CushionService.Wording;

namespace CushionService.Tests.Intake;

/// <summary>The figures of the trade are in the engine, each once: the intake has none, and the contract states those that are
/// used.</summary>
public sealed partial class TradeFiguresTests
{
    private static readonly WorkroomPractice Inches = WorkroomPractice.Imperial,
        Metric = WorkroomPractice.Metric;

    public static TheoryData<string, Length, Length> Lengths() =>
        new()
        {
            { "/cushions/*/closure/tapeWidth", Inches.Closures.TapeWidth, Metric.Closures.TapeWidth },
            { "/cushions/*/closure/buttonDiameter", Inches.Closures.ButtonDiameter, Metric.Closures.ButtonDiameter },
            { "/cushions/*/closure/tieLength", Inches.Closures.TieLength, Metric.Closures.TieLength },
            { "/cushions/*/ends/tail", Inches.Shapes.Tail, Metric.Shapes.Tail },
            { "/cushions/*/ends/turning", Inches.Shapes.EndTurning, Metric.Shapes.EndTurning },
            { "/cushions/*/flange/turning", Inches.Shapes.FlangeTurning, Metric.Shapes.FlangeTurning },
            { "/cushions/*/edging/cordDiameter", Inches.Trims.CordDiameter, Metric.Trims.CordDiameter },
            { "/cushions/*/ties/length", Inches.Trims.TieLength, Metric.Trims.TieLength },
            { "/cushions/*/ties/width", Inches.Trims.TieWidth, Metric.Trims.TieWidth },
            { "/cushions/*/straps/width", Inches.Trims.StrapWidth, Metric.Trims.StrapWidth },
            { "/cushions/*/tufts/buttonDiameter", Inches.Trims.TuftButton, Metric.Trims.TuftButton },
            { "/workroom/seamAllowance", Inches.SeamAllowance, Metric.SeamAllowance },
            { "/workroom/cuttingStep", Inches.CuttingStep, Metric.CuttingStep },
            { "/workroom/zipperTurnUnder", Inches.ZipperTurnUnder, Metric.ZipperTurnUnder },
            { "/workroom/zipperReturn", Inches.ZipperReturn, Metric.ZipperReturn },
            { "/workroom/hemFold", Inches.HemFold, Metric.HemFold },
            { "/workroom/tapeMargin", Inches.TapeMargin, Metric.TapeMargin },
            { "/workroom/edgeDistance", Inches.EdgeDistance, Metric.EdgeDistance },
            { "/workroom/boxingTautness", Inches.BoxingTautness, Metric.BoxingTautness },
            { "/workroom/foamOversize", Inches.FoamOversize, Metric.FoamOversize },
            { "/workroom/squaring", Inches.Squaring, Metric.Squaring },
            { "/workroom/kerf", Inches.Kerf, Metric.Kerf },
            { "/workroom/stitch/stitchLength", Inches.Stitches.StitchLength, Metric.Stitches.StitchLength },
            { "/workroom/stitch/bight", Inches.Stitches.Bight, Metric.Stitches.Bight },
        };

    [Theory]
    [MemberData(nameof(Lengths))]
    public void The_contract_states_the_length_that_applies(string pointer, Length inches, Length metric)
    {
        string usual = LengthText.Format(inches, LengthUnit.Inch);
        string expected = metric == inches ? usual : $"{usual}, or {LengthText.Format(metric, LengthUnit.Millimetre)} in a metric order";

        Assert.Equal(expected, Field(pointer).Default);
    }

    [Theory]
    [InlineData("/cushions/*/ties/pairs")]
    [InlineData("/cushions/*/straps/count")]
    [InlineData("/cushions/*/edging/fullness")]
    [InlineData("/cushions/*/channels/takeUp")]
    [InlineData("/cushions/*/fill/plumpness")]
    [InlineData("/workroom/threadWaste")]
    public void The_contract_states_the_number_that_applies(string pointer)
    {
        decimal used = pointer switch
        {
            "/cushions/*/ties/pairs" => Inches.Trims.TiePairs,
            "/cushions/*/straps/count" => Inches.Trims.StrapCount,
            "/cushions/*/edging/fullness" => Number(Inches.Trims.RuffleFullness),
            "/cushions/*/channels/takeUp" => Number(Inches.Shapes.ChannelTakeUp),
            "/cushions/*/fill/plumpness" => FillPractice.Plumpness(Fullness.Medium),
            _ => Inches.ThreadWaste,
        };

        Assert.Equal(used, decimal.Parse(Field(pointer).Default!, CultureInfo.InvariantCulture));
    }

    [Fact]
    public void The_intake_has_no_length_of_its_own()
    {
        string[] files = Directory.GetFiles(
            Path.Combine(Repository.Root, "src", "CushionService", "Intake"),
            "*.cs",
            SearchOption.AllDirectories
        );

        Assert.NotEmpty(files);
        Assert.All(files, file => Assert.DoesNotMatch(Figure(), File.ReadAllText(file)));
    }

    private static FieldAnswer Field(string pointer) =>
        CatalogueWording.In(Language.English).Fields.Single(field => field.Pointer == pointer);

    private static decimal Number(Fraction fraction) => (decimal)fraction.Numerator / (decimal)fraction.Denominator;

    // A length made of a number, or a sentence with a number of inches in it; the example of what a length may be is neither.
    [GeneratedRegex("""FromInches|FromMillimetres|Length\.From\([0-9]|\b[0-9]+(/[0-9]+)? in\b""")]
    private static partial Regex Figure();
}
