using BenchmarkDotNet.Attributes;
using CushionService.Nesting;
using CushionService.Nesting.Rectangles.Beams;
using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Benchmarks.Nesting;

/// <summary>One pass of the local search, one beam of all layers and one slice of the exact search: none allocates.</summary>
[MemoryDiagnoser]
public class SearchStepBenchmark
{
    private const int Copies = 60;
    private const int States = 100;
    private const long Length = 1_200;
    private SkylinePass _pass = null!;
    private BeamSearch _beam = null!;
    private BoxSearch _box = null!;
    private StepBudget _budget = null!;
    private int[] _order = [];
    private RectangleLayout _layout = null!;
    private Xorshift _random = new(1);

    [GlobalSetup]
    public void Prepare()
    {
        var random = new Random(1);
        var pieces = Enumerable
            .Range(0, Copies)
            .Select(_ => new NestingPiece
            {
                Width = random.Next(10, 120),
                Length = random.Next(10, 120),
                Rotations = Rotations.QuarterTurns,
            });
        var set = new RectangleSet([.. pieces], 216);
        _budget = new StepBudget(long.MaxValue, CancellationToken.None);
        _pass = new SkylinePass(set, 216, Copies);
        _beam = new BeamSearch(new BeamKinds(set), States, null, _budget);
        _layout = new RectangleLayout(set);
        _order = [.. Enumerable.Range(0, Copies)];

        // A box that millions of steps do not decide, so that no slice ends early.
        var box = new BoxContents(
            [98, 110, 79, 101, 23, 10, 14],
            [98, 79, 110, 23, 101, 110, 17],
            new bool[7],
            [6, 3, 1, 3, 1, 4, 2],
            216,
            504
        );
        _box = new BoxSearch(box, AxisWeights.Of(box, true), AxisWeights.Of(box.Sideways, true), 12, _budget);
    }

    [Benchmark]
    public long Pass() => _pass.Lay(_order, Length, long.MaxValue / 4, _budget);

    [Benchmark]
    public bool Beam() => _beam.Run(States, Length, false, false, BeamGuide.InTurn[0], ref _random, _layout);

    [Benchmark]
    public int ExactSlice() => (int)_box.Run(24_000);
}
