namespace CushionService.Documents.Pictures;

/// <summary>How a picture shows a cushion.</summary>
internal enum PictureView
{
    /// <summary>Finished.</summary>
    Finished,

    /// <summary>Its pieces drawn apart, in the order in which they are sewn.</summary>
    Exploded,
}
