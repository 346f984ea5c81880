using System.Text.RegularExpressions;
using System.Xml.Linq;
using Xunit;

namespace ProcessorDesk.Web.Tests.House;

/// <summary>docs/dependencies.md gives each package its reason and licence; it and the package list say the same.</summary>
public sealed partial class DependenciesTests
{
    private static List<string> Packages() =>
        XDocument.Parse(Repository.Read("Directory.Packages.props")).Descendants("PackageVersion")
            .Select(package => (string)package.Attribute("Include")!).ToList();

    [Fact]
    public void Packages_and_their_page_agree()
    {
        var described = PackageRow().Matches(Repository.Read("docs/dependencies.md")).Select(row => row.Groups["name"].Value);

        Assert.Equal(Packages().Order(StringComparer.Ordinal), described.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_listed_package_is_used_by_a_project()
    {
        var used = Repository.Files.Where(file => file.EndsWith(".csproj", StringComparison.Ordinal))
            .SelectMany(file => XDocument.Parse(Repository.Read(file)).Descendants("PackageReference"))
            .Select(reference => (string)reference.Attribute("Include")!);

        Assert.Equal(Packages().ToHashSet(), used.ToHashSet());
    }

    /// <summary>A table row that begins with a package's name as code.</summary>
    [GeneratedRegex(@"^\| `(?<name>[\w.]+)` \|", RegexOptions.Multiline)]
    private static partial Regex PackageRow();
}
