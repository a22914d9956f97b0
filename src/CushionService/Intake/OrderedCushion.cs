using CushionService.Contract.Orders;
using Outline = CushionService.Engine.Specifications.Outlines.Outline;

namespace CushionService.Intake;

/// <summary>A cushion that an order names, or that a bay is made as.</summary>
/// <param name="Written">The cushion as written; of a bay without an outline.</param>
/// <param name="Pointer">Its place in the order, as a JSON Pointer.</param>
/// <param name="At">Takes what is wrong with it.</param>
/// <param name="Drawn">Its outline, where a bay gives it.</param>
internal sealed record OrderedCushion(Cushion Written, string Pointer, Findings At, Outline? Drawn = null);
