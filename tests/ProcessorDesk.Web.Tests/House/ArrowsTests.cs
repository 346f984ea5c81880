using System.Xml.Linq;
using Xunit;

namespace ProcessorDesk.Web.Tests.House;

/// <summary>Which project may know which: docs/architecture.md draws it.</summary>
public sealed class ArrowsTests
{
    private static readonly Dictionary<string, string[]> s_arrows = new()
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
        Assert.Equal(s_arrows.Keys.Order(StringComparer.Ordinal), Projects(tests: false).Select(NameOf).Order(StringComparer.Ordinal));

    [Fact]
    public void Projects_refer_to_each_other_only_along_the_drawn_arrows()
    {
        foreach (var project in Projects(tests: false))
        {
            var references = Includes(project, "ProjectReference").Select(NameOf).Order(StringComparer.Ordinal);
            Assert.True(
                s_arrows[NameOf(project)].SequenceEqual(references),
                $"{project} refers to {string.Join(", ", references)}; allowed: {string.Join(", ", s_arrows[NameOf(project)])}.");
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

    [Theory]
    [InlineData("using PdfSharp", "src/ProcessorDesk.Paper/Drawing/Canvas.cs")]
    [InlineData("using QRCoder", "src/ProcessorDesk.Paper/Drawing/QrCode.cs")]
    public void One_file_knows_each_library_of_paper(string import, string file) =>
        Assert.Equal(
            [file],
            Repository.HandWritten(".cs", ".cshtml").Where(f => f.StartsWith("src/", StringComparison.Ordinal)
                && Repository.Read(f).Contains(import, StringComparison.Ordinal)));

    private static string NameOf(string path) => Path.GetFileNameWithoutExtension(path.Replace('\\', '/'));

    private static List<string> Includes(string project, string element) =>
        XDocument.Parse(Repository.Read(project)).Descendants(element).Select(e => (string)e.Attribute("Include")!).ToList();
}
