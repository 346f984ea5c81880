using System.Text.RegularExpressions;
using Xunit;

namespace ProcessorDesk.Web.Tests.House;

/// <summary>What the documents point at is there.</summary>
public sealed partial class DocumentsTests
{
    private static IEnumerable<string> Documents => Repository.Files.Where(file => file.EndsWith(".md", StringComparison.Ordinal));

    [Fact]
    public void Every_link_inside_the_tree_leads_somewhere()
    {
        var links = (
            from document in Documents
            from Match link in Link().Matches(Repository.Read(document))
            let target = link.Groups["target"].Value.Split('#')[0]
            where target.Length > 0 && !target.Contains("://", StringComparison.Ordinal)
            select (Document: document, Target: target)).ToList();

        Assert.NotEmpty(links);
        Repository.ExpectNone(links.Where(link => !Exists(link.Document, link.Target)).Select(link => $"{link.Document}: {link.Target}"));
    }

    [Fact]
    public void Every_place_in_code_that_the_sources_name_exists()
    {
        var places = CodePlace().Matches(Repository.Read("docs/sources.md")).Select(place => place.Groups["file"].Value).Distinct().ToList();

        Assert.NotEmpty(places);
        Repository.ExpectNone(places.Where(place => !Repository.Files.Contains("src/ProcessorDesk." + place)));
    }

    private static bool Exists(string document, string target) =>
        Path.Exists(Path.Combine(Repository.Root, Path.GetDirectoryName(document)!, target));

    [GeneratedRegex(@"\]\((?<target>[^)\s]+)\)")]
    private static partial Regex Link();

    /// <summary>A file below one of the source projects, as "Trade/Yields/PublishedRatios.cs".</summary>
    [GeneratedRegex(@"`(?<file>(Trade|Records|Paper|Web)/[\w/]+\.(cs|cshtml))`")]
    private static partial Regex CodePlace();
}
