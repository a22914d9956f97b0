namespace CushionService.Contract;

/// <summary>What either door takes at most.</summary>
internal static class Limits
{
    /// <summary>Bytes of an order: 1 MiB.</summary>
    public const int OrderBytes = 1 << 20;
}
