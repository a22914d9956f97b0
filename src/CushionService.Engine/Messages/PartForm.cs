namespace CushionService.Engine.Messages;

/// <summary>How a part of a template is written.</summary>
internal enum PartForm
{
    /// <summary>As it is.</summary>
    Text,

    /// <summary>The value of an argument.</summary>
    Value,

    /// <summary>The case of a count.</summary>
    Plural,

    /// <summary>The case of a word.</summary>
    Select,
}
