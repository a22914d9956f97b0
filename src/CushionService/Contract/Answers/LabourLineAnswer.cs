namespace CushionService.Contract.Answers;

/// <summary>The workroom's time for one operation on one line of cushions.</summary>
public sealed record LabourLineAnswer
{
    /// <summary>The cushion.</summary>
    public required string Cushion { get; init; }

    /// <summary>The operation, as price books name it; <c>matching</c> for the time that matching to a repeat adds.</summary>
    public required string Operation { get; init; }

    /// <summary>How often it is done, over all cushions made the same.</summary>
    public required int Times { get; init; }

    /// <summary>Minutes that it takes in all.</summary>
    public required double Minutes { get; init; }

    /// <summary>What they cost, as a decimal number, rounded half up to the currency's smallest coin.</summary>
    public required string Amount { get; init; }
}
