using CushionService.Documents.Drawings;

namespace CushionService.Tests.Documents;

public sealed class LabelTests
{
    [Theory]
    [InlineData(60, 20, true, false)]
    [InlineData(12, 60, true, true)]
    [InlineData(24, 4, false, false)]
    [InlineData(4, 24, false, true)]
    [InlineData(2, 2, false, false)]
    public void It_says_as_much_as_the_room_holds(double width, double height, bool named, bool upwards)
    {
        Label label = Label.For("3", ["bench/front"], "45 × 4 in", width, height)!;
        Assert.Equal((named, upwards), (label.Named, label.Upwards));
        (double along, double across) = Label.Extent(label.Lines, label.Size);
        Assert.True(along <= (upwards ? height : width) + 1e-9 && across <= (upwards ? width : height) + 1e-9);
    }

    [Fact]
    public void A_room_too_small_for_print_gets_none() => Assert.Null(Label.For("3", ["bench/front"], "45 × 4 in", 1, 1));

    [Theory]
    [InlineData(60, "Window seat, top")]
    [InlineData(20, "top")]
    public void A_name_too_long_for_the_room_gives_way_to_the_part(double width, string expected)
    {
        Label label = Label.For("3", ["Window seat, top", "top"], "45 × 4 in", width, 10)!;
        Assert.True(label.Named);
        Assert.Equal(expected, string.Join(' ', label.Lines).Replace("3:", "3").Split("3 ")[1].Replace(" 45 × 4 in", ""));
    }

    [Fact]
    public void The_room_of_an_ell_is_its_larger_arm()
    {
        Spot[] ell = [new(0, 0), new(100, 0), new(100, 40), new(40, 40), new(40, 60), new(0, 60)];
        Box room = LabelRoom.Within(ell, Box.Around(ell));
        Assert.True(room.Width >= 90 && room.Bottom <= 40);
    }

    [Theory]
    [InlineData("bench/front", 4, "benc…")]
    [InlineData("short", 10, "short")]
    [InlineData("anything", 0.5, "")]
    public void Long_text_is_cut_with_an_ellipsis(string text, double ems, string expected) =>
        Assert.Equal(expected, TextWidth.Shorten(text, ems));
}
