namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>How a print lies on the cushions of a row.</summary>
public enum RowPrint
{
    /// <summary>It runs on from seat to seat, as if the row were cut from one width.</summary>
    Continuous,

    /// <summary>A motif lies in the middle of every seat.</summary>
    Same,
}
