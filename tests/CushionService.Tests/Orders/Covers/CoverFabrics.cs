using System.Text.Json.Nodes;

namespace CushionService.Tests.Orders.Covers;

/// <summary>Fabrics, plain and printed, and what a shop stocks beside them.</summary>
internal static class CoverFabrics
{
    /// <summary>A fabric: any width, grain, repeat, shrinkage and sale step.</summary>
    public static JsonObject Fabric(string id, Sizes sizes)
    {
        string unit = sizes.Units == "in" ? "yd" : "m";
        bool own = sizes.Chance(6);
        JsonObject fabric = new()
        {
            ["id"] = id,
            ["width"] = sizes.Of(sizes.Pick(45, 54, 54, 60, 118)),
            ["sold"] = new JsonObject { ["unit"] = unit, ["step"] = sizes.Pick("1/8", "1/4", "1/3", "0.1", "1/2") },
        };
        if (sizes.Chance(50))
        {
            fabric["label"] = sizes.Pick("Striped ticking", "Canvas", "Printed linen");
        }

        if (sizes.Chance(50))
        {
            fabric["selvedge"] = sizes.Between(0.25, 0.75);
        }

        if (sizes.Chance(60))
        {
            fabric["grain"] = sizes.Pick("up-the-bolt", "railroaded", "either");
        }

        if (sizes.Chance(20))
        {
            fabric["oneWay"] = true;
        }

        if (sizes.Chance(8))
        {
            fabric["pile"] = true;
        }
        else if (sizes.Chance(8))
        {
            fabric["coated"] = true;
        }

        if (sizes.Chance(40))
        {
            fabric["shrinkage"] = new JsonObject { ["length"] = sizes.Whole(0, 10) / 100.0, ["width"] = sizes.Whole(0, 6) / 100.0 };
        }

        if (sizes.Chance(35))
        {
            fabric["repeat"] = Repeat(sizes);
        }

        if (own)
        {
            fabric["customerOwned"] = true;
            fabric["brought"] = sizes.Between(40, 300);
        }
        else
        {
            fabric["price"] = new JsonObject { ["amount"] = $"{sizes.Whole(2, 60)}.{sizes.Whole(10, 99)}", ["per"] = unit };
        }

        return fabric;
    }

    /// <summary>Stocks and prices: everything that a cover may take, or nothing but prices for what is bought loose.</summary>
    public static (JsonArray Stocks, JsonArray Prices) Shop(Sizes sizes)
    {
        string length = sizes.Units == "in" ? "yd" : "m";
        JsonArray stocks = [],
            prices = [];
        foreach (double thickness in (double[])[1, 2, 3, 4])
        {
            Stock($"foam-{thickness}", "foam", "each", ("width", 24), ("length", 72), ("thickness", thickness));
        }

        Stock("batting", "batting", length, ("width", sizes.Pick(27, 48, 96)));
        foreach (double zipper in (double[])[12, 18, 24, 36])
        {
            if (sizes.Chance(50))
            {
                Stock($"zipper-{zipper}", "zipper", "each", ("length", zipper));
            }
        }

        Stock("chain", "zipper", length);
        Stock("thread", "thread", "each", ("length", 3600));
        Stock("cord", "cord", length, ("diameter", 0.15625));
        Stock("glue", "adhesive", sizes.Units == "in" ? "sq-yd" : "sq-m");
        Stock("form-18", "form", "each", ("width", 18), ("depth", 18));
        Stock("form-20", "form", "each", ("width", 20), ("depth", 20));
        return (stocks, prices);

        void Stock(string id, string kind, string per, params (string Name, double Inches)[] figures)
        {
            JsonObject stock = new()
            {
                ["id"] = id,
                ["kind"] = kind,
                ["sold"] = new JsonObject { ["unit"] = per },
            };
            foreach ((string name, double inches) in figures)
            {
                stock[name] = FormattableString.Invariant($"{inches} in");
            }

            stocks.Add(stock);
            prices.Add(
                new JsonObject
                {
                    ["item"] = id,
                    ["amount"] = $"{sizes.Whole(0, 20)}.{sizes.Whole(10, 99)}",
                    ["per"] = per,
                }
            );
        }
    }

    private static JsonObject Repeat(Sizes sizes)
    {
        int kind = sizes.Whole(0, 5);
        JsonObject repeat = [];
        if (kind != 0)
        {
            repeat["length"] = sizes.Chance(10) ? sizes.Of(0.25) : sizes.Between(1, 27);
        }

        if (kind != 1)
        {
            repeat["width"] = sizes.Chance(10) ? sizes.Of(0.5) : sizes.Between(2, 27);
        }

        if (kind > 1 && sizes.Chance(30))
        {
            repeat["drop"] = "half";
        }

        JsonObject motif = [];
        if (kind != 1 && sizes.Chance(40))
        {
            motif["x"] = 0;
        }

        if (kind != 0 && sizes.Chance(40))
        {
            motif["y"] = 0;
        }

        if (motif.Count > 0)
        {
            repeat["motif"] = motif;
        }

        return repeat;
    }
}
