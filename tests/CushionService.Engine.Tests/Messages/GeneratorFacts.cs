using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace CushionService.Engine.Tests.Messages;

/// <summary>A broken message stops the build, at its place, and says what would be right.</summary>
public sealed class GeneratorFacts
{
    [Theory]
    [InlineData("Cut {length}.", "", "'{length}' is not declared in the comment")]
    [InlineData("Cut it.", "length: length", "the argument 'length' is declared and not used")]
    [InlineData("Cut {length}.", "length: metres", "'metres' is no type; the types are length, area,")]
    [InlineData("Cut {length}.", "length = length", "'length = length' must be a name, a colon and a type")]
    [InlineData("Cut {a}.", "a: length; a: length", "the argument 'a' is declared twice")]
    [InlineData("Cut {length.", "length: length", "a brace is opened and not closed")]
    [InlineData("Cut length}.", "", "a brace is closed and not opened, at 11")]
    [InlineData("Cut '{'it.'}", "", "an apostrophe before a brace or # begins a quotation that does not end")]
    [InlineData("", "", "the template is empty")]
    [InlineData("{n, plural, one {#}}", "n: count", "'n' lacks the case other")]
    [InlineData("{n, plural, single {#} other {#}}", "n: count", "'single' is no case of 'n', or is there twice")]
    [InlineData("{n, plural, one {#} one {#} other {#}}", "n: count", "'one' is no case of 'n', or is there twice")]
    [InlineData("{n, plural, one {#} other {#}", "n: count", "a brace is opened and not closed")]
    [InlineData("{n, plural, other {#}}", "n: length", "a plural needs a count; 'n' is none, or may be absent")]
    [InlineData("{n, plural, other {#}}", "n: count?", "a plural needs a count; 'n' is none, or may be absent")]
    [InlineData("{n, number, short}", "n: number", "'number' of '{n}' must be plural, select or list")]
    [InlineData("{n, plural}", "n: count", "'plural' of '{n}' lacks its cases")]
    [InlineData("{n}", "n: flag", "the flag 'n' can be selected by and not be printed")]
    [InlineData("{n}", "n: length?", "'n' may be absent: print it in the other case of")]
    [InlineData("{n, select, none {{n}} other {}}", "n: length?", "'n' may be absent: print it in the other case of")]
    [InlineData("{n, select, none {} other {}}", "n: length", "'n' cannot be selected by: it is no word, no flag, and never absent")]
    [InlineData("{n, select, yes {} other {}}", "n: flag", "'yes' is no case of 'n', or is there twice")]
    [InlineData("{n, select, other {{n}}}", "n: length?", "'n' lacks the case none")]
    [InlineData("{n, select, Back {} other {}}", "n: word Engine.Side", "'Back' is no case of 'n', or is there twice")]
    [InlineData("{n, select, {} other {}}", "n: word Engine.Side", "'' is no case of 'n', or is there twice")]
    [InlineData("{n, plural, few {#} other {#}}", "n: count", "'few' is no case of 'n', or is there twice")]
    [InlineData("{n, list, and}", "n: length", "'n, list' needs a list, and one of: and, or, sum, semicolon")]
    [InlineData("{n, list, nor}", "n: id[]", "'n, list' needs a list, and one of: and, or, sum, semicolon")]
    public void A_broken_template_is_an_error(string template, string comment, string reason)
    {
        Diagnostic fault = Assert.Single(Faults(("StepTexts.resx", File(Data("join-run", template, comment)))));

        Assert.StartsWith($"StepTexts.resx: join-run: {reason}", fault.GetMessage(), StringComparison.Ordinal);
        Assert.Equal(DiagnosticSeverity.Error, fault.Severity);
        Assert.Equal(1, fault.Location.GetLineSpan().StartLinePosition.Line);
    }

    [Theory]
    [InlineData("JoinRun", "a key must be in kebab case, as 'join-run'")]
    [InlineData("join--run", "a key must be in kebab case, as 'join-run'")]
    [InlineData("plain", "the key is there twice")]
    public void A_wrong_key_is_an_error(string key, string reason)
    {
        Diagnostic fault = Assert.Single(Faults(("StepTexts.resx", File(Data("plain", "Cut."), Data(key, "Sew.")))));

        Assert.Equal($"StepTexts.resx: {key}: {reason}", fault.GetMessage());
        Assert.Equal(2, fault.Location.GetLineSpan().StartLinePosition.Line);
    }

    [Fact]
    public void A_file_that_is_not_XML_is_an_error() =>
        Assert.StartsWith(
            "StepTexts.resx: : the file is not XML",
            Assert.Single(Faults(("StepTexts.resx", "<root>"))).GetMessage(),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("StepTexts.de.resx", "cut", "Schneiden {depth}.", "StepTexts.de.resx: cut: '{depth}' is not declared in the comment")]
    [InlineData("StepTexts.de.resx", "sew", "Nähen.", "StepTexts.de.resx: sew: the English file has no such key")]
    [InlineData("StepTexts.xx.resx", "cut", "{length}", "StepTexts.xx.resx: : 'xx' is no language of the service; they are de, fr, es")]
    public void A_translation_keeps_to_the_English_keys_and_arguments(string name, string key, string template, string fault) =>
        Assert.Contains(
            fault,
            Faults(("StepTexts.resx", File(Data("cut", "Cut {length}.", "length: length"))), (name, File(Data(key, template))))
                .Select(found => found.GetMessage())
        );

    [Fact]
    public void A_translation_alone_is_an_error() =>
        Assert.Equal(
            "StepTexts.de.resx: : the area has no English file",
            Assert.Single(Faults(("StepTexts.de.resx", File(Data("cut", "Schneiden."))))).GetMessage()
        );

    [Fact]
    public void A_class_shows_its_sentences_and_lies_beside_its_file()
    {
        (ImmutableArray<Diagnostic> faults, string source) = Run(
            (
                "Instructions/StepTexts.resx",
                File(
                    Data("join-run", "Join &lt;{run}&gt;.", "run: part[]; depth: length?")
                        .Replace("&gt;.", "&gt;{depth, select, none {} other { by {depth}}}.", StringComparison.Ordinal)
                )
            )
        );

        Assert.Empty(faults);
        Assert.Contains("namespace Trade.Instructions;", source, StringComparison.Ordinal);
        Assert.Contains("/// <summary>Join &lt;{run}&gt;{depth, select,", source, StringComparison.Ordinal);
        Assert.Contains(
            "Message JoinRun(global::System.Collections.Generic.IEnumerable<global::CushionService.Engine.Patterns.Panels.PartName> @run, "
                + "global::CushionService.Engine.Measures.Length? @depth)",
            source,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_case_names_a_member_of_its_enumeration() =>
        Assert.Contains(
            "nameof(global::CushionService.Contract.Way.UpTheBolt)",
            Run(("StepTexts.resx", File(Data("lay", "{way, select, up-the-bolt {up} other {{way}}}", "way: word Contract.Way")))).Source,
            StringComparison.Ordinal
        );

    private static string File(params string[] data) => $"<root>\n{string.Join("\n", data)}\n</root>";

    private static string Data(string key, string template, string comment = "") =>
        $"""<data name="{key}"><value>{template}</value><comment>{comment}</comment></data>""";

    private static ImmutableArray<Diagnostic> Faults(params (string Path, string Text)[] files) => Run(files).Faults;

    private static (ImmutableArray<Diagnostic> Faults, string Source) Run(params (string Path, string Text)[] files)
    {
        GeneratorDriverRunResult result = CSharpGeneratorDriver
            .Create(
                [new MessageGenerator.MessageGenerator().AsSourceGenerator()],
                files.Select(file => new GivenFile($"/src/{file.Path}", file.Text)),
                optionsProvider: new GivenOptions()
            )
            .RunGenerators(CSharpCompilation.Create("Trade"))
            .GetRunResult();
        return (result.Diagnostics, string.Concat(result.GeneratedTrees.Select(tree => tree.ToString())));
    }
}
