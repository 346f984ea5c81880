using System.Xml.Linq;
using Xunit;

namespace ProcessorDesk.Web.Tests.House;

/// <summary>Which project may know which: docs/architecture.md draws it.</summary>
public sealed class ArrowsTests
{
    private static readonly Dictionary<string, string[]> _arrows = new()
    {
        ["ProcessorDesk.Trade"] = [],
        ["ProcessorDesk.Records"] = ["ProcessorDesk.Trade"],
        ["ProcessorDesk.Paper"] = ["ProcessorDesk.Trade"],
        ["ProcessorDesk.Migrations"] = ["ProcessorDesk.Records"],
        ["ProcessorDesk.SeedDemo"] = ["ProcessorDesk.Records", "ProcessorDesk.Trade"],
        ["ProcessorDesk.Web"] =
        [
            "ProcessorDesk.Migrations", "ProcessorDesk.Paper", "ProcessorDesk.Records", "ProcessorDesk.SeedDemo",
            "ProcessorDesk.Trade",
        ],
    };

    private static IEnumerable<string> Projects(bool tests) =>
        Repository.Files.Where(file => file.EndsWith(".csproj", StringComparison.Ordinal)
            && file.StartsWith("tests/", StringComparison.Ordinal) == tests);

    [Fact]
    public void Projects_outside_tests_are_the_six_of_the_house() =>
        Assert.Equal(_arrows.Keys.Order(StringComparer.Ordinal), Projects(tests: false).Select(NameOf).Order(StringComparer.Ordinal));

    [Fact]
    public void Projects_refer_to_each_other_only_along_the_drawn_arrows()
    {
        foreach (var project in Projects(tests: false))
        {
            var references = Includes(project, "ProjectReference").Select(NameOf).Order(StringComparer.Ordinal);
            Assert.True(
                _arrows[NameOf(project)].SequenceEqual(references),
                $"{project} refers to {string.Join(", ", references)}; allowed: {string.Join(", ", _arrows[NameOf(project)])}.");
        }
    }

    [Fact]
    public void Trade_needs_no_package() =>
        Assert.Empty(Includes("src/ProcessorDesk.Trade/ProcessorDesk.Trade.csproj", "PackageReference"));

    [Fact]
    public void Every_source_project_has_its_test_project() =>
        Assert.Superset(
            Repository.Files.Where(file => file.StartsWith("src/", StringComparison.Ordinal) && file.EndsWith(".csproj", StringComparison.Ordinal))
                .Select(file => NameOf(file) + ".Tests").ToHashSet(),
            Projects(tests: true).Select(NameOf).ToHashSet());

    [Fact]
    public void Every_project_is_in_the_solution()
    {
        var solution = Repository.Read("ProcessorDesk.sln").Replace('\\', '/');
        Assert.All(
            Projects(tests: false).Concat(Projects(tests: true)),
            project => Assert.Contains($"\"{project}\"", solution, StringComparison.Ordinal));
    }

    private static string NameOf(string path) => Path.GetFileNameWithoutExtension(path.Replace('\\', '/'));

    private static List<string> Includes(string project, string element) =>
        XDocument.Parse(Repository.Read(project)).Descendants(element).Select(e => (string)e.Attribute("Include")!).ToList();
}
