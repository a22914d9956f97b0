namespace CushionService.Documents.Sheets;

/// <summary>What is in a column.</summary>
internal enum ColumnKind
{
    /// <summary>Words, which may take several lines.</summary>
    Text,

    /// <summary>What the row is about, which heads it for screen readers.</summary>
    Name,

    /// <summary>Figures, at the right.</summary>
    Number,

    /// <summary>A box to tick.</summary>
    Tick,
}
