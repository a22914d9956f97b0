using System.Globalization;

namespace CushionService.LoadTests.Runs;

/// <summary>What one answer took; a line of a file, so that slices of a long run add up.</summary>
/// <param name="Number">Number of the generated order.</param>
/// <param name="Call">What was asked of it: a quote, a fit or a comparison.</param>
/// <param name="Effort">How hard it was searched.</param>
/// <param name="Thread">Processor time of the calling thread, milliseconds.</param>
/// <param name="Process">Processor time of all threads, milliseconds.</param>
/// <param name="Pieces">Pieces that were cut.</param>
/// <param name="Steps">Millions of steps of its layouts.</param>
/// <param name="Sold">What is sold of each fabric, nanometres, in the order of the fabrics.</param>
/// <param name="Name">What it is, in a few words; "none" where no sound order was made.</param>
internal sealed record MeasuredQuote(
    int Number,
    string Call,
    string Effort,
    double Thread,
    double Process,
    int Pieces,
    double Steps,
    string Sold,
    string Name
)
{
    /// <summary>The name of a number that makes no sound order.</summary>
    public const string None = "none";

    private static readonly Dictionary<string, double> Budgets = new()
    {
        ["quick"] = 100,
        ["standard"] = 1000,
        ["thorough"] = 20_000,
    };

    /// <summary>What its effort may take, milliseconds.</summary>
    public double Budget => Budgets[Effort];

    /// <summary>Whether it took longer.</summary>
    public bool IsOver => Thread > Budget;

    /// <summary>The efforts that a run can ask for.</summary>
    public static IEnumerable<string> Efforts => Budgets.Keys;

    /// <summary>Reads a line that <see cref="Line"/> wrote.</summary>
    public static MeasuredQuote Read(string line)
    {
        string[] parts = line.Split('\t');
        return new MeasuredQuote(
            int.Parse(parts[0], CultureInfo.InvariantCulture),
            parts[1],
            parts[2],
            Of(3),
            Of(4),
            int.Parse(parts[5], CultureInfo.InvariantCulture),
            Of(6),
            parts[7],
            parts[8]
        );

        double Of(int part) => double.Parse(parts[part], CultureInfo.InvariantCulture);
    }

    /// <summary>The line of a file.</summary>
    public string Line =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Number}\t{Call}\t{Effort}\t{Thread:0.0}\t{Process:0}\t{Pieces}\t{Steps:0.000}\t{Sold}\t{Name}"
        );

    /// <summary>The line for a reader.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Thread, 8:0} ms  {Process, 6:0} ms on all threads  {Steps, 6:0.0} M steps  {Pieces, 4} pieces  {Number, 6} {Call}  {Name}"
        );
}
