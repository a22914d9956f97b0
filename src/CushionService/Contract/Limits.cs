namespace CushionService.Contract;

/// <summary>What either door takes at most.</summary>
internal static class Limits
{
    /// <summary>Bytes of an order: 1 MiB.</summary>
    public const int OrderBytes = 1 << 20;

    /// <summary>The violations that are listed of one order. A body of one mebibyte could have a hundred thousand: nobody reads them
    /// all, and an answer must not be many times larger than its order.</summary>
    public const int Violations = 1000;
}
