namespace CushionService.Intake;

/// <summary>What an order is sent for; some fields have a meaning in one call only.</summary>
public enum Purpose
{
    /// <summary>To be made as it is.</summary>
    Making,

    /// <summary>To be quoted as it is, and once for each candidate.</summary>
    Comparing,

    /// <summary>To be held against the fabric on hand.</summary>
    Fitting,
}
