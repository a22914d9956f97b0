using BenchmarkDotNet.Running;
using CushionService.Benchmarks.Nesting;
using CushionService.Benchmarks.Outlines;

switch (args)
{
    case ["nesting", .. var rest]:
        NestingVerb.Run(rest);
        break;
    case ["outlines", .. var rest]:
        LiteratureRatios.Run(rest);
        break;
    case ["outlines-cushions"]:
        CushionSavings.Run();
        break;
    case ["outlines-budget", .. var rest]:
        Budgets.Run(rest);
        break;
    case ["outlines-pairs"]:
        PairCosts.Run();
        break;
    case ["pictures", var folder]:
        SearchPictures.Write(folder);
        break;
    case ["circles"]:
        DiscOptima.Run();
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        break;
}
