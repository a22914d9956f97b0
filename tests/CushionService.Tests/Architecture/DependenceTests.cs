using System.Reflection;
using CushionService.Engine.Quoting;
using CushionService.Nesting.Solving;

namespace CushionService.Tests.Architecture;

/// <summary>Dependence runs one way: host, engine, nesting; and within the engine from the later stage to the earlier.</summary>
public sealed class DependenceTests
{
    private const string Engine = "CushionService.Engine.";
    private const string Host = "CushionService.";

    private static readonly string[] Stages =
    [
        "Measures",
        "Geometry",
        "Specifications",
        "Patterns",
        "Cutting",
        "Layouts",
        "Materials",
        "Costing",
        "Instructions",
        "Quoting",
        "Comparing",
        "Fitting",
    ];

    private static readonly Assembly EngineAssembly = typeof(Quote).Assembly,
        HostAssembly = typeof(OrderDesk).Assembly;

    [Fact]
    public void Every_type_of_the_engine_stands_in_a_stage() =>
        Assert.All(OwnTypes(EngineAssembly), type => Assert.Contains(Folder(type, Engine), Stages));

    [Fact]
    public void A_stage_of_the_engine_uses_earlier_stages_alone() =>
        Assert.Empty(
            Uses(EngineAssembly, (user, used) => Array.IndexOf(Stages, Folder(used, Engine)) > Array.IndexOf(Stages, Folder(user, Engine)))
        );

    [Fact]
    public void Nesting_has_never_heard_of_a_cushion()
    {
        Assert.DoesNotContain(
            typeof(Nester).Assembly.GetReferencedAssemblies(),
            used => used.Name!.StartsWith("CushionService", StringComparison.Ordinal)
        );
        Assert.Equal(
            ["CushionService.Nesting"],
            EngineAssembly
                .GetReferencedAssemblies()
                .Select(used => used.Name!)
                .Where(name => name.StartsWith("CushionService", StringComparison.Ordinal))
        );
    }

    [Theory]
    [InlineData("Rest", "Grpc")]
    [InlineData("Grpc", "Rest")]
    [InlineData("Intake", "Rest")]
    [InlineData("Intake", "Grpc")]
    [InlineData("Intake", "Wording")]
    [InlineData("Wording", "Rest")]
    [InlineData("Wording", "Grpc")]
    [InlineData("Contract", "Rest")]
    [InlineData("Contract", "Grpc")]
    public void A_folder_of_the_host_does_not_use(string folder, string other) =>
        Assert.Empty(Uses(HostAssembly, (user, used) => Folder(user, Host) == folder && Folder(used, Host) == other));

    [Theory]
    [InlineData(typeof(QuotePipeline), "CushionService.Engine.Costing.Cost")]
    [InlineData(typeof(QuotePipeline), "CushionService.Engine.Layouts.FabricNesting")]
    [InlineData(typeof(Drafting), "CushionService.Engine.Patterns.Constructions")]
    public void What_a_method_s_body_calls_is_seen(Type user, string used) =>
        Assert.Contains(Nested(user).SelectMany(UsedTypes.Of), type => type.FullName == used);

    private static IEnumerable<string> Uses(Assembly assembly, Func<Type, Type, bool> wrongly) =>
        from user in OwnTypes(assembly)
        from used in UsedTypes.Of(user)
        where used.Assembly == assembly && wrongly(user, used)
        select $"{user} uses {used}";

    // The compiler's own types (<PrivateImplementationDetails>, embedded attributes) stand outside our folders.
    private static IEnumerable<Type> OwnTypes(Assembly assembly) =>
        assembly
            .GetTypes()
            .Where(type => type.Namespace?.StartsWith(Host, StringComparison.Ordinal) == true || type.Namespace == "CushionService");

    private static IEnumerable<Type> Nested(Type type) =>
        type.GetNestedTypes(BindingFlags.Public | BindingFlags.NonPublic).SelectMany(Nested).Append(type);

    private static string Folder(Type type, string root) =>
        type.Namespace is { } name && name.StartsWith(root, StringComparison.Ordinal) ? name[root.Length..].Split('.')[0] : "";
}
