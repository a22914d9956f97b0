namespace CushionService.Documents.Sheets;

/// <summary>How loud a paragraph is.</summary>
internal enum Tone
{
    /// <summary>As the text of the sheet.</summary>
    Body,

    /// <summary>Smaller: reasons and remarks.</summary>
    Small,

    /// <summary>Larger: what is looked for first.</summary>
    Large,

    /// <summary>In a frame: what must not be missed.</summary>
    Notice,
}
