using System.Diagnostics;
using CushionService.PriceBooks;

namespace CushionService.Tests.PriceBooks;

/// <summary>A price book with faults is refused with the line and the reason of each.</summary>
public sealed class PriceBookFaultTests
{
    [Theory]
    [InlineData("""{ "currency": "USD", "prices": [ }""", "1 This is not JSON.")]
    [InlineData("{\n \"currency\": \"USD\",\n \"prices\": [\n", "4 This is not JSON.")]
    [InlineData("", "1 The file is empty, or no regular file.")]
    [InlineData("[]", "1 wrong-type")]
    [InlineData("\"nook\"", "1 wrong-type")]
    [InlineData("{\n}", "1 /currency required", "1 /prices required")]
    [InlineData("{ \"currency\": \"USD\",\n \"prices\": null }", "2 /prices required")]
    [InlineData("{ \"currency\": \"usd\",\n \"prices\": [] }", "1 /currency bad-form")]
    [InlineData(
        "{ \"currency\": \"USD\", \"prices\": [\n { \"item\": \"a\", \"amount\": 1, \"per\": \"yd\" },\n null ] }",
        "2 /prices/0/amount wrong-type",
        "3 /prices/1 wrong-type"
    )]
    [InlineData(
        "{ \"currency\": \"USD\", \"prices\": [\n { \"item\": \"a\",\n \"amount\": \"-1\", \"per\": \"ell\",\n \"colour\": 1 } ] }",
        "3 /prices/0/amount bad-form",
        "3 /prices/0/per unknown-value",
        "4 /prices/0/colour unknown-field"
    )]
    [InlineData(
        "{ \"currency\": \"USD\", \"prices\": [\n { \"item\": \"a\", \"amount\": \"1\", \"per\": \"yd\" },\n { \"item\": \"a\", "
            + "\"amount\": \"2\", \"per\": \"yd\" } ] }",
        "3 /prices/1/item duplicate"
    )]
    [InlineData(
        "{ \"currency\": \"USD\", \"prices\": [ { \"item\": \"a\", \"amount\": \"1\", \"per\": \"yd\", \"breaks\": [\n { \"from\": 5, "
            + "\"amount\": \"1\" },\n { \"from\": 5, \"amount\": \"0.9\" } ] } ] }",
        "3 /prices/0/breaks/1/from not-rising"
    )]
    [InlineData(
        "{ \"currency\": \"USD\", \"prices\": [],\n \"costing\": { \"markup\": 0.5,\n \"margin\": 0.4 } }",
        "3 /costing/margin not-combinable"
    )]
    [InlineData(
        "{ \"currency\": \"JPY\", \"prices\": [],\n \"costing\": { \"rounding\": {\n \"step\": \"0.50\" } } }",
        "3 /costing/rounding/step out-of-range"
    )]
    [InlineData(
        "{ \"currency\": \"USD\", \"prices\": [],\n \"costing\": { \"labour\": { \"hourlyRate\": \"30\", \"operations\": [\n { "
            + "\"operation\": \"boxed\", \"minutes\": 75 },\n { \"operation\": \"boxed\", \"minutes\": 80 },\n { \"operation\": "
            + "\"juggle\", \"minutes\": -1 } ] } } }",
        "4 /costing/labour/operations/1/operation duplicate",
        "5 /costing/labour/operations/2/minutes out-of-range",
        "5 /costing/labour/operations/2/operation unknown-value"
    )]
    [InlineData(
        "{ \"currency\": \"USD\", \"prices\": [\n { \"item\": \"foam\", \"amount\": \"1\", \"per\": \"yd\" } ],\n \"stocks\": [ { "
            + "\"id\": \"foam\", \"kind\": \"foam\", \"sold\": { \"unit\": \"lb\" } } ] }",
        "2 /prices/0/per not-combinable"
    )]
    [InlineData(
        "{ \"currency\": \"USD\", \"prices\": [],\n \"goods\": [ { \"item\": \"a b\" },\n { \"item\": \"a\", \"link\": "
            + "\"javascript:alert(1)\" },\n { \"item\": \"b\", \"link\": \"http://nook.example\" },\n { \"label\": \"c\" } ] }",
        "2 /goods/0/item bad-form",
        "3 /goods/1/link bad-form",
        "4 /goods/2/link bad-form",
        "5 /goods/3/item required"
    )]
    public void Every_fault_is_told_with_its_line(string text, params string[] faults)
    {
        using BookFolder books = new(("spring", text));

        Assert.Null(books.Store.Find("spring"));
        Assert.All(books.Faults, fault => Assert.Equal("spring.json", fault.File));
        Assert.Equal(faults, books.Faults.Select(Written).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("my shop")]
    [InlineData("größe")]
    [InlineData("nook\n")]
    [InlineData("")]
    public void A_book_that_no_order_can_name_is_refused(string name)
    {
        using BookFolder books = new((name, BookFolder.Nook));

        PriceBookError fault = Assert.Single(books.Faults);
        Assert.Contains("No order can name this book", fault.Reason, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', fault.File);
        Assert.Equal(0, books.Store.Count);
    }

    [Fact]
    public void A_book_that_is_no_object_is_not_called_an_order()
    {
        using BookFolder books = new(("nook", "[]"));

        Assert.Contains("A price book is an object", Assert.Single(books.Faults).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_broken_version_is_refused_and_the_old_one_stays()
    {
        using BookFolder books = new(("nook", BookFolder.Nook), ("other", BookFolder.Nook));
        books.Write("nook", BookFolder.Nook.Replace("\"20.00\"", "20.00", StringComparison.Ordinal));
        books.Write("other", BookFolder.Nook.Replace("\"1\"", "\"2\"", StringComparison.Ordinal));

        Assert.Equal(
            ["nook.json, line 5: /prices/0/amount wrong-type: The value must be text, not a number."],
            books.Store.Reload().Select(fault => fault.ToString())
        );
        Assert.Equal(("1", "2"), (books.Store.Find("nook")!.Version, books.Store.Find("other")!.Version));
    }

    [Fact]
    public void A_pipe_an_empty_file_and_a_link_to_a_device_are_told_and_not_opened()
    {
        using BookFolder books = new(("nook", BookFolder.Nook), ("void", ""));
        using (Process mkfifo = Process.Start("mkfifo", [Path.Combine(books.Location, "pipe.json")]))
        {
            mkfifo.WaitForExit();
        }

        File.CreateSymbolicLink(Path.Combine(books.Location, "device.json"), "/dev/zero");
        File.CreateSymbolicLink(Path.Combine(books.Location, "linked.json"), Path.Combine(books.Location, "nook.json"));

        Assert.Equal(["device.json", "pipe.json", "void.json"], books.Store.Reload().Select(fault => fault.File));
        Assert.Equal(2, books.Store.Count);
    }

    [Fact]
    public void A_book_whose_file_is_gone_is_gone()
    {
        using BookFolder books = new(("nook", BookFolder.Nook));
        File.Delete(Path.Combine(books.Location, "nook.json"));

        Assert.Empty(books.Store.Reload());
        Assert.Null(books.Store.Find("nook"));
    }

    [Fact]
    public void Stocks_are_measured_in_the_book_s_own_units()
    {
        using BookFolder books = new(
            (
                "nook",
                """
                { "currency": "EUR", "units": "cm", "prices": [], "stocks": [{ "id": "sheet", "kind": "foam", "width": 100,
                  "length": 200, "thickness": 5 }] }
                """
            )
        );

        Assert.Equal(Engine.Measures.Length.FromMillimetres(1000), books.Store.Find("nook")!.Stocks.Single().Width);
    }

    private static string Written(PriceBookError fault)
    {
        string[] words = fault.Reason.Split(':')[0].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return fault.Reason.Contains(':', StringComparison.Ordinal)
            ? $"{fault.Line} {string.Join(' ', words)}"
            : $"{fault.Line} {fault.Reason}";
    }
}
