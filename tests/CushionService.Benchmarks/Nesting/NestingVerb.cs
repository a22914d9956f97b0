using CushionService.Nesting;

namespace CushionService.Benchmarks.Nesting;

/// <summary>The verb <c>nesting [family...]</c>, with the options of <see cref="FamilyRun"/>.</summary>
internal static class NestingVerb
{
    private static readonly SaleLadder EighthYards = new(0, 18, 1, 1);

    public static void Run(IReadOnlyList<string> arguments)
    {
        var run = FamilyRun.Parse(arguments);
        string[] chosen = [.. arguments.Where(argument => !argument.StartsWith('-'))];
        string[] families =
            chosen.Length > 0 ? chosen : ["C", "BENG", "NGCUT", "CGCUT", "GCUT", "cushions", "large", "growth", "repeats", "cancellation"];
        foreach (string family in families)
        {
            if (family == "large")
            {
                LargeOrders.Print(run);
            }
            else if (family == "growth")
            {
                LargeOrders.PrintGrowth();
            }
            else if (family == "repeats")
            {
                RepeatOrders.Print(run);
            }
            else if (family == "budgets")
            {
                StepBudgets.Print(run);
            }
            else if (family == "cancellation")
            {
                Cancellations.Print();
            }
            else if ((Puzzles.Family(family) ?? OpenData.Family(family)) is { } instances)
            {
                FamilyTable.Print(family, instances, family == "cushions" ? EighthYards : SaleLadder.EveryUnit, run);
            }
            else
            {
                Console.WriteLine($"{family}: skipped, the open data are absent (set CUSHION_DATA to their folder)");
            }
        }
    }
}
