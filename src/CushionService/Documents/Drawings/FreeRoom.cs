namespace CushionService.Documents.Drawings;

/// <summary>Room that is left beside things already drawn.</summary>
internal static class FreeRoom
{
    /// <summary>The largest of the rooms found by shrinking away from each thing in turn, to the side that leaves the most.</summary>
    /// <param name="room">The room.</param>
    /// <param name="taken">What is drawn already.</param>
    /// <returns>Not always the largest there is, which would need a search; without extent where nothing is
    /// left.</returns>
    public static Box Within(Box room, IEnumerable<Box> taken)
    {
        foreach (Box thing in taken)
        {
            if (!room.Overlaps(thing))
            {
                continue;
            }

            Box whole = room;
            ReadOnlySpan<Box> sides =
            [
                whole with
                {
                    Width = thing.X - whole.X,
                },
                whole with
                {
                    X = thing.Right,
                    Width = whole.Right - thing.Right,
                },
                whole with
                {
                    Height = thing.Y - whole.Y,
                },
                whole with
                {
                    Y = thing.Bottom,
                    Height = whole.Bottom - thing.Bottom,
                },
            ];
            room = whole with { Width = 0, Height = 0 };
            foreach (Box side in sides)
            {
                room = side.Width > 0 && side.Height > 0 && side.Width * side.Height > room.Width * room.Height ? side : room;
            }
        }

        return room;
    }
}
