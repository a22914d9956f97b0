using CushionService.Contract.Answers;

namespace CushionService.Documents.Drawings;

/// <summary>The placements that show in a view, with their captions. Copies that lie the same way share the work of finding room.</summary>
internal static class PlacedPieces
{
    /// <summary>The placements that show in a band of a layout, in the answer's order.</summary>
    /// <param name="scene">What is drawn.</param>
    /// <param name="band">The part that is drawn.</param>
    /// <param name="view">Where the fabric is in the drawing.</param>
    /// <param name="mm">User units in a millimetre of the nominal print.</param>
    public static List<PlacedPiece> In(LayoutScene scene, Band band, FabricView view, double mm)
    {
        var units = new OrderUnits(scene.Units, scene.Language);
        Dictionary<(string Piece, int Rotation), (Caption Caption, Box At)> whole = [];
        List<PlacedPiece> placed = [];
        foreach (PlacementAnswer placement in scene.Layout.Placements.Where(band.Shows))
        {
            (string number, PieceAnswer piece) = scene.Pieces[placement.Piece];
            Spot[]? corners = piece.Points is null ? null : Outline.Placed(piece, placement);
            Box box = view.At(placement.X, placement.Y, placement.Width, placement.Length);
            Box visible = view.Visible(box);
            Spot up = Turn(view.Up, placement.Rotation);
            bool cutThrough = placement.Y < band.From || placement.Y + placement.Length > band.To;
            Caption caption;
            if (!cutThrough && whole.TryGetValue((piece.Id, placement.Rotation), out var twin))
            {
                caption = twin.Caption.Moved(new Spot(box.X - twin.At.X, box.Y - twin.At.Y));
            }
            else
            {
                Box room = corners is null
                    ? visible
                    : LabelRoom.Within([.. corners.Select(corner => view.At(corner.X, corner.Y))], visible);
                caption = Caption.For(number, piece, units, room, up, mm);
                if (!cutThrough)
                {
                    whole[(piece.Id, placement.Rotation)] = (caption, box);
                }
            }

            placed.Add(new PlacedPiece(number, piece, placement, corners, up, caption));
        }

        return placed;
    }

    // Counter-clockwise as one looks at the fabric; the drawing's y runs down, the view does not mirror.
    private static Spot Turn(Spot up, int rotation) =>
        rotation switch
        {
            90 => new Spot(up.Y, -up.X),
            180 => new Spot(-up.X, -up.Y),
            270 => new Spot(-up.Y, up.X),
            _ => up,
        };
}
