namespace CushionService.Tests.Hosting;

/// <summary>Random numbers that are known beforehand: always the same, or the greatest that may be where that is less.</summary>
internal sealed class KnownRandom(int number) : Random
{
    public override int Next(int maxValue) => Math.Min(number, maxValue - 1);
}
