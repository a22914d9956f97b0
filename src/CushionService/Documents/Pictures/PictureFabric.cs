namespace CushionService.Documents.Pictures;

/// <summary>How a fabric looks in a picture.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Tint">Its colour.</param>
/// <param name="Hatch">Which hatch tells it from the others, where it has no colour: 0 for none.</param>
internal sealed record PictureFabric(string Name, Tint Tint, int Hatch);
