using Xunit;

namespace ProcessorDesk.Web.Tests.House;

/// <summary>What stands where in the tree, and how long a file may grow.</summary>
public sealed class TreeTests
{
    private const int LongestFile = 300;
    private const int OrdinaryFile = 120;

    private static readonly string[] s_topLevel =
        ["README.md", "DEVELOPERS.md", "LICENSE", "ProcessorDesk.sln", "global.json", "src", "tests", "migrations", "seed-demo", "docs"];

    private static readonly string[] s_sayNothing = ["Models", "Dtos", "Services", "Helpers", "Common", "Utils"];

    [Fact]
    public void The_top_level_holds_only_its_fixed_names()
    {
        var strangers = Repository.Files.Select(file => file.Split('/')[0]).Distinct()
            .Where(name => !s_topLevel.Contains(name) && !name.StartsWith('.') && !name.StartsWith("Directory.", StringComparison.Ordinal));

        Repository.ExpectNone(strangers);
    }

    [Fact]
    public void No_folder_has_a_name_that_says_nothing()
    {
        var found = Repository.Files.Where(file => file.Split('/')[..^1].Intersect(s_sayNothing, StringComparer.OrdinalIgnoreCase).Any());

        Repository.ExpectNone(found);
    }

    [Fact]
    public void No_file_of_code_is_longer_than_300_lines()
    {
        var longer = Lengths().Where(file => file.Lines > LongestFile).Select(file => $"{file.File}: {file.Lines}");

        Repository.ExpectNone(longer);
    }

    [Fact]
    public void Nine_files_of_code_in_ten_have_at_most_120_lines()
    {
        var lengths = Lengths().ToList();
        var longer = lengths.Where(file => file.Lines > OrdinaryFile).OrderByDescending(file => file.Lines).ToList();

        Assert.True(longer.Count * 10 <= lengths.Count, $"{longer.Count} of {lengths.Count} are longer: {string.Join(", ", longer)}");
    }

    /// <summary>The one stylesheet is left out: a rule of it reads as well at line 500 as at line 5.</summary>
    private static IEnumerable<(string File, int Lines)> Lengths() =>
        Repository.HandWritten(".cs", ".cshtml", ".js").Select(file => (file, Repository.Lines(file).Length));
}
