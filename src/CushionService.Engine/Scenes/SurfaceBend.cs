namespace CushionService.Engine.Scenes;

/// <summary>A place where a surface bends.</summary>
/// <param name="At">How far along the panel, in millimetres.</param>
/// <param name="IsCorner">Whether it turns a corner there; else it is on a curve.</param>
public readonly record struct SurfaceBend(double At, bool IsCorner);
