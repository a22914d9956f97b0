using System.Reflection;
using CushionService.Desk;
using CushionService.Engine.Quoting;
using CushionService.Nesting.Solving;

namespace CushionService.Tests.Architecture;

/// <summary>Dependence runs one way: host, engine, nesting; and in each from the later folder to the earlier. Read from the compiled
/// code.</summary>
public sealed class FolderTests
{
    private static readonly FolderOrder Host = new(
        typeof(OrderDesk).Assembly,
        "Contract",
        "Contract.Orders",
        "Contract.Answers",
        "Languages",
        "Json",
        "Intake",
        "PriceBooks",
        "Wording",
        "Documents",
        "Documents.Drawings",
        "Documents.Pdf",
        "Documents.Pictures",
        "Documents.Sheets",
        "Documents.CutSheets",
        "Documents.Projects",
        "Documents.TrueSize",
        "Documents.Exchange",
        "Documents.Labels",
        "Metrics",
        "Desk",
        "Rejections",
        "Deprecations",
        "Access",
        "Admission",
        "Streaming",
        "Widget",
        "Rest.Pages",
        "Rest.Estimating",
        "Rest.OpenApi",
        "Rest",
        "Grpc.V1",
        "Grpc.Mapping",
        "Grpc",
        "Operations",
        "Bulk",
        ""
    );

    private static readonly FolderOrder Engine = new(
        typeof(Quote).Assembly,
        "Measures",
        "Geometry",
        "Messages",
        "Specifications.Outlines",
        "Specifications.Stocks",
        "Specifications.Fabrics",
        "Specifications.Fillings",
        "Specifications.Closures",
        "Specifications.Trimmings",
        "Specifications.Shapes",
        "Specifications.Pricing",
        "Specifications.Practices",
        "Specifications",
        "Patterns.Panels",
        "Patterns.Sections",
        "Patterns.Additions",
        "Patterns.Constructions",
        "Cutting",
        "Layouts",
        "Scenes",
        "Materials",
        "Costing",
        "Instructions",
        "Quoting",
        "Fitting"
    );

    private static readonly FolderOrder Nesting = new(
        typeof(Nester).Assembly,
        "",
        "Search",
        "Rectangles.Skylines",
        "Rectangles.Repeats",
        "Rectangles.Sheets",
        "Rectangles.Proofs",
        "Rectangles.PerfectBoxes",
        "Rectangles.Beams",
        "Rectangles",
        "Outlines.NoFit",
        "Outlines.Placing",
        "Outlines.Bounding",
        "Outlines.Searching",
        "Outlines",
        "Audit",
        "Solving"
    );

    public static TheoryData<string> Projects => ["host", "engine", "nesting"];

    [Theory]
    [MemberData(nameof(Projects))]
    public void Every_type_lies_in_a_listed_folder(string project) =>
        Assert.All(Of(project).Types, type => Assert.NotNull(Of(project).FolderOf(type)));

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_folder_uses_the_folders_before_it_alone(string project) => Assert.Empty(Of(project).UsesOfLaterFolders());

    [Fact]
    public void Rest_and_gRPC_do_not_use_each_other() =>
        Assert.Empty(Host.Uses((user, used) => (IsOf("Rest", user) && IsOf("Grpc", used)) || (IsOf("Grpc", user) && IsOf("Rest", used))));

    [Fact]
    public void The_audit_of_layouts_uses_plain_values_alone() =>
        Assert.Empty(Nesting.Uses((user, used) => user == "Audit" && used is not ("" or "Audit")));

    [Fact]
    public void Nesting_uses_no_other_project_and_the_engine_nesting_alone()
    {
        Assert.Empty(ProjectsUsedBy(typeof(Nester).Assembly));
        Assert.Equal(["CushionService.Nesting"], ProjectsUsedBy(typeof(Quote).Assembly));
    }

    // Without these, a reader that sees too little would find every order kept.
    [Theory]
    [InlineData(typeof(QuotePipeline), "CushionService.Engine.Costing.Cost")]
    [InlineData(typeof(QuotePipeline), "CushionService.Engine.Layouts.FabricNesting")]
    [InlineData(typeof(Drafting), "CushionService.Engine.Patterns.Constructions.ConstructionRegistry")]
    [InlineData(typeof(Nester), "CushionService.Nesting.Audit.StripAudit")]
    public void What_the_body_of_a_method_calls_is_seen(Type user, string used) =>
        Assert.Contains(Nested(user).SelectMany(UsedTypes.Of), type => type.FullName == used);

    [Fact]
    public void A_use_of_a_later_folder_is_found() =>
        Assert.NotEmpty(new FolderOrder(typeof(Nester).Assembly, "Solving", "Audit", "").UsesOfLaterFolders());

    private static FolderOrder Of(string project) =>
        project switch
        {
            "host" => Host,
            "engine" => Engine,
            _ => Nesting,
        };

    private static bool IsOf(string door, string folder) => folder == door || folder.StartsWith(door + ".", StringComparison.Ordinal);

    private static IEnumerable<string> ProjectsUsedBy(Assembly assembly) =>
        assembly
            .GetReferencedAssemblies()
            .Select(used => used.Name!)
            .Where(name => name.StartsWith("CushionService", StringComparison.Ordinal));

    private static IEnumerable<Type> Nested(Type type) =>
        type.GetNestedTypes(BindingFlags.Public | BindingFlags.NonPublic).SelectMany(Nested).Append(type);
}
