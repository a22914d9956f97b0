using CushionService.Contract.Answers;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Tests.Documents;

/// <summary>Pieces and marks of the scenarios, as an answer has them.</summary>
internal static class ScenarioPieces
{
    public static PieceAnswer Piece(
        string id,
        string fabric,
        int quantity,
        double width,
        double length,
        Rotations rotation,
        string because,
        params MarkAnswer[] marks
    ) =>
        new()
        {
            Id = id,
            Cushion = id.Split('/')[0],
            Part = id.Split('/')[^1],
            Fabric = fabric,
            Quantity = quantity,
            Width = width,
            Length = length,
            Rotation = rotation,
            Grain = rotation == Rotations.QuarterTurns ? Grain.Either : Grain.UpTheBolt,
            Because = because,
            Marks = marks,
        };

    public static PieceAnswer Round(string id, double diameter, int quantity)
    {
        double radius = diameter / 2;
        PointAnswer[] points =
        [
            .. Enumerable
                .Range(0, 96)
                .Select(i => Math.PI * i / 48)
                .Select(angle => new PointAnswer(radius + radius * Math.Cos(angle), radius + radius * Math.Sin(angle))),
        ];
        MarkAnswer[] quarters =
        [
            Notch(radius, 0, "quarter"),
            Notch(diameter, radius, "quarter"),
            Notch(radius, diameter, "quarter"),
            Notch(0, radius, "quarter"),
        ];
        return Piece(id, "plain", quantity, diameter, diameter, Rotations.HalfTurn, "24 in across + 2 × 1/2 in seam", quarters) with
        {
            Points = points,
        };
    }

    public static MarkAnswer Notch(double x, double y, string because) =>
        new()
        {
            Kind = MarkKind.Notch,
            X = x,
            Y = y,
            Because = because,
        };

    public static MarkAnswer Handle(double x, string because) =>
        new()
        {
            Kind = MarkKind.HandleEnd,
            X = x,
            Y = 2,
            Because = because,
        };

    public static MarkAnswer Fold(double x) =>
        new()
        {
            Kind = MarkKind.FoldLine,
            X = x,
            Y = 0,
            ToX = x,
            ToY = 10.5,
            Because = "fold the strap",
        };
}
