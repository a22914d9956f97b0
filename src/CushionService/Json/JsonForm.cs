namespace CushionService.Json;

/// <summary>The forms that a value of JSON may have, as people call them.</summary>
internal enum JsonForm
{
    /// <summary>Members in braces.</summary>
    Object,

    /// <summary>Entries in brackets.</summary>
    List,

    /// <summary>A string.</summary>
    Text,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A boolean.</summary>
    TrueOrFalse,

    /// <summary>A number, or text with a length: only wanted, never found.</summary>
    Length,

    /// <summary>A number, or text with a fraction: only wanted, never found.</summary>
    Quantity,

    /// <summary>Null.</summary>
    Null,
}
