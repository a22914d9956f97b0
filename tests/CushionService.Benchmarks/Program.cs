using BenchmarkDotNet.Running;
using CushionService.Benchmarks.Nesting;

switch (args)
{
    case ["nesting", .. var rest]:
        NestingVerb.Run(rest);
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        break;
}
