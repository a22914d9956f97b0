namespace CushionService.Documents.Pictures;

/// <summary>The words of a picture.</summary>
/// <param name="Id">Prefix of every id in it, unique within its document.</param>
/// <param name="Title">What it shows, in a few words.</param>
/// <param name="Description">What it shows, for those who do not see it.</param>
internal sealed record PictureText(string Id, string Title, string Description);
