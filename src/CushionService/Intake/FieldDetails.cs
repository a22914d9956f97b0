using CushionService.Contract;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Intake;

/// <summary>What is wrong with the value of a field, where several things may be.</summary>
internal static class FieldDetails
{
    /// <summary>Why a text is not read as a length.</summary>
    /// <param name="words">The field.</param>
    /// <param name="measure">The text.</param>
    public static Message Unread(string words, Measure measure) =>
        LengthText.MayBeThousands(measure.Text) ? FieldTexts.Thousands(words) : FieldTexts.NotALength(words);
}
