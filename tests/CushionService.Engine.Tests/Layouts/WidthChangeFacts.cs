using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Tests.Layouts;

public sealed class WidthChangeFacts
{
    [Theory]
    [InlineData(36, 2.25, 2.25, 2.25, Sources.Mathematics)]
    [InlineData(45, 1.8, 1.75, 2, Sources.WidthChart)]
    [InlineData(54, 1.5, 1.5, 1.5, Sources.WidthChart)]
    public void Fabric_of_another_width_is_laid_anew_and_never_less_than_its_area(
        int width,
        double byArea,
        double chart,
        double sold,
        string source
    )
    {
        // 36 patches of 9 in fill 2 1/4 yd of 36 in. By area they need 1.8 yd of 45 in, where five lie across and the chart's 1 3/4 falls
        // short.
        FabricSpecification fabric = Fabric with
        {
            Width = In(width),
        };
        Yardage yardage = Quote(Order(fabric, Piece("patch", 36, 9, 9))).Yardages[0];
        double bound = (double)yardage.Layout.LowerBound.In(LengthUnit.Yard);

        Assert.True(bound >= byArea - 1e-9, "The bound is below the area.");
        Assert.Equal(sold, (double)yardage.Sold.In(LengthUnit.Yard));
        Assert.Equal(chart < byArea, chart < bound);
    }
}
