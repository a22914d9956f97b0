using BenchmarkDotNet.Attributes;
using CushionService.Nesting;
using CushionService.Nesting.Rectangles;
using CushionService.Nesting.Rectangles.Proofs;

namespace CushionService.Benchmarks.Nesting;

/// <summary>One pass of the local search and one slice of the exact search: neither allocates.</summary>
[MemoryDiagnoser]
public class SearchStepBenchmark
{
    private const int Copies = 60;
    private SkylinePass _pass = null!;
    private BoxSearch _box = null!;
    private StepBudget _budget = null!;
    private int[] _order = [];

    [GlobalSetup]
    public void Prepare()
    {
        var random = new Random(1);
        var pieces = Enumerable.Range(0, Copies).Select(_ => new NestingPiece
        {
            Width = random.Next(10, 120),
            Length = random.Next(10, 120),
            Rotations = Rotations.QuarterTurns,
        });
        var set = new RectangleSet([.. pieces], 216);
        _budget = new StepBudget(long.MaxValue, CancellationToken.None);
        _pass = new SkylinePass(set, 216, Copies);
        _order = [.. Enumerable.Range(0, Copies)];
        var box = new BoxContents([104, 24, 8, 10], [104, 201, 104, 28], new bool[4], [4, 2, 4, 1], 216, 306);
        _box = new BoxSearch(box, AxisWeights.Of(box, true), AxisWeights.Of(box.Sideways, true), 12, _budget);
    }

    [Benchmark]
    public long Pass() => _pass.Lay(_order, 1_200, long.MaxValue / 4, _budget);

    [Benchmark]
    public int ExactSlice() => (int)_box.Run(24_000);
}
