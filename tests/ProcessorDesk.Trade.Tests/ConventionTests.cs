using System.Reflection;
using System.Text.RegularExpressions;
using Xunit;

namespace ProcessorDesk.Trade.Tests;

/// <summary>What every type of the trade keeps to, whoever writes it.</summary>
public sealed partial class ConventionTests
{
    private static readonly Assembly s_trade = typeof(Weight).Assembly;

    /// <summary>Every value type of the trade's own namespace, and the ticket code; results elsewhere are plain records.</summary>
    private static IEnumerable<Type> Measures =>
        s_trade.GetExportedTypes().Where(type =>
            type is { IsValueType: true, IsEnum: false, Namespace: "ProcessorDesk.Trade" or "ProcessorDesk.Trade.Tickets" });

    private static List<string> SourceFiles { get; } = FindSourceFiles();

    [Fact]
    public void Measures_are_made_only_by_factories_that_carry_the_unit()
    {
        Assert.True(Measures.Count() >= 8);
        Assert.All(Measures, type =>
        {
            Assert.Empty(type.GetConstructors(BindingFlags.Public | BindingFlags.Instance));
            Assert.Empty(type.GetMember("Value"));
            Assert.Empty(type.GetFields(BindingFlags.Public | BindingFlags.Instance));
            Assert.All(type.GetProperties(), property => Assert.False(property.SetMethod?.IsPublic ?? false, $"{type.Name}.{property.Name} can be set"));
        });
    }

    [Fact]
    public void Nothing_turns_into_something_else_by_itself() =>
        Assert.All(s_trade.GetExportedTypes(), type =>
            Assert.DoesNotContain(type.GetMethods(), method => method.Name is "op_Implicit" or "op_Explicit"));

    [Fact]
    public void Classes_are_sealed_abstract_or_static() =>
        Assert.All(s_trade.GetExportedTypes().Where(type => type.IsClass), type => Assert.True(type.IsSealed || type.IsAbstract, type.FullName));

    [Fact]
    public void No_member_has_a_floating_point_type()
    {
        var floating = new[] { typeof(float), typeof(double), typeof(Half) };
        const BindingFlags Everything = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        foreach (var type in s_trade.GetTypes().Where(type => type.Namespace?.StartsWith("ProcessorDesk", StringComparison.Ordinal) == true))
        {
            var seen = type.GetMethods(Everything).SelectMany(method => method.GetParameters().Select(parameter => parameter.ParameterType).Append(method.ReturnType))
                .Concat(type.GetFields(Everything).Select(field => field.FieldType));
            Assert.DoesNotContain(seen, each => floating.Contains(each));
        }
    }

    [Fact]
    public void No_source_file_has_a_word_of_floating_point()
    {
        Assert.True(SourceFiles.Count >= 20);
        Assert.All(SourceFiles, file => Assert.DoesNotMatch(FloatingPoint(), File.ReadAllText(file)));
    }

    [Theory]
    [InlineData("private double _grams;", true)]
    [InlineData("var x = MathF.Sqrt(2);", true)]
    [InlineData("x = 1.5;", true)]
    [InlineData("x = 2e3;", true)]
    [InlineData("x = 1.5m + 0x1F; // 3.5 to 4.5 lb, section 1.2", false)]
    [InlineData("var doubled = 2m * 1_000.5m;", false)]
    [InlineData("Print(\"12.4 lb\")", false)]
    public void The_search_for_floating_point_finds_what_it_should(string line, bool found) => Assert.Equal(found, FloatingPoint().IsMatch(line));

    [Fact]
    public void No_source_file_looks_at_a_clock_or_a_culture() =>
        Assert.All(SourceFiles, file => Assert.DoesNotMatch(ClockOrCulture(), File.ReadAllText(file)));

    [Fact]
    public void Every_public_type_says_what_it_is()
    {
        var checkedTypes = new HashSet<string>(); // a type may be told in two files
        foreach (var file in SourceFiles)
        {
            var lines = File.ReadAllLines(file);
            for (var i = 0; i < lines.Length; i++)
            {
                if (PublicType().Match(lines[i]) is not { Success: true } type)
                    continue;
                checkedTypes.Add(type.Groups["name"].Value);
                var above = lines[..i].LastOrDefault(line => !line.StartsWith('[')) ?? "";
                Assert.True(above.StartsWith("///", StringComparison.Ordinal), $"{Path.GetFileName(file)}: {lines[i]}");
            }
        }

        Assert.Equal(s_trade.GetExportedTypes().Count(type => !type.IsNested), checkedTypes.Count);
    }

    [Fact]
    public void Every_measure_answers_the_five_questions() =>
        Assert.All(Measures, type =>
        {
            var text = File.ReadAllText(SourceFiles.Single(file => Path.GetFileName(file) == type.Name + ".cs"));
            Assert.All((string[])["Range:", "Granularity:", "Equality", "order", "default is"],
                word => Assert.True(text.Contains(word, StringComparison.Ordinal), $"{type.Name}: {word}"));
        });

    private static List<string> FindSourceFiles()
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(root.FullName, "ProcessorDesk.sln")))
            root = root.Parent ?? throw new InvalidOperationException("The solution is not above the tests.");
        return [.. Directory.EnumerateFiles(Path.Combine(root.FullName, "src", "ProcessorDesk.Trade"), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
                && !file.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal))];
    }

    /// <summary>The type names, and a literal without its m outside of text and comments: one that ends a term of an expression.</summary>
    [GeneratedRegex(@"\b(?:double|float|Double|Half|MathF)\b|[=(+*/-]\s*[0-9][0-9_]*(?:\.[0-9_]+|[eE][0-9]+)\s*[;,)+*/-]")]
    private static partial Regex FloatingPoint();

    [GeneratedRegex(@"\bDateTime(?:Offset)?\.(?:UtcNow|Now|Today)\b|\bStopwatch\b|CurrentCulture|CurrentUICulture|Environment\.TickCount")]
    private static partial Regex ClockOrCulture();

    [GeneratedRegex(@"^public (?:(?:sealed|static|abstract|readonly|partial) )*(?:class|record|struct|enum|interface) (?:struct )?(?<name>\w+)")]
    private static partial Regex PublicType();
}
