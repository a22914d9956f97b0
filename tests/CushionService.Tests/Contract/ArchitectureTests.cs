using System.Text.RegularExpressions;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Contract;

/// <summary>The two doors lead to one room, and not to each other.</summary>
public sealed class ArchitectureTests
{
    [Theory]
    [InlineData("Rest", "Grpc")]
    [InlineData("Grpc", "Rest")]
    [InlineData("Contract", "Rest")]
    [InlineData("Contract", "Grpc")]
    [InlineData("Documents", "Rest")]
    public void A_folder_does_not_reach_for_another(string folder, string other)
    {
        string[] files = Directory.GetFiles(
            Path.Combine(Repository.Root, "src", "CushionService", folder),
            "*.cs",
            SearchOption.AllDirectories
        );
        Regex reach = new($@"(using |[^\w.]|global::)(CushionService\.)?{other}\.[A-Z]|using CushionService\.{other};");

        Assert.NotEmpty(files);
        Assert.DoesNotContain(files, file => reach.IsMatch(Regex.Replace(File.ReadAllText(file), @"(using |global::)Grpc\.", "")));
    }
}
