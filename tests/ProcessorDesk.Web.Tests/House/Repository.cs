using System.Diagnostics;
using Xunit;

namespace ProcessorDesk.Web.Tests.House;

/// <summary>The source tree these tests were built from, found upwards from the test assembly.</summary>
internal static class Repository
{
    private static readonly string[] s_madeFolders = ["bin", "obj", "TestResults", ".git", ".vs", ".idea"];

    public static string Root { get; } = FindRoot();

    /// <summary>Every file that belongs to the tree, as paths from the root with forward slashes.</summary>
    public static IReadOnlyList<string> Files { get; } = ListFiles();

    /// <summary>Code written by hand: no generated migrations, nothing vendored.</summary>
    public static IEnumerable<string> HandWritten(params string[] extensions) =>
        Files.Where(file => extensions.Contains(Path.GetExtension(file))
            && !file.StartsWith("migrations/History/", StringComparison.Ordinal)
            && !file.Contains("/wwwroot/lib/", StringComparison.Ordinal));

    /// <summary>Fails with every entry spelt out; the framework's own message would cut them short.</summary>
    public static void ExpectNone(IEnumerable<string> found)
    {
        var list = found.ToList();
        Assert.True(list.Count == 0, string.Join('\n', list));
    }

    public static string Read(string file) => File.ReadAllText(Path.Combine(Root, file));

    public static string[] Lines(string file) => File.ReadAllLines(Path.Combine(Root, file));

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ProcessorDesk.sln")))
            folder = folder.Parent;
        Assert.NotNull(folder);
        return folder.FullName;
    }

    private static List<string> ListFiles()
    {
        var files = (ListedByGit() ?? ListedByFolder())
            .Where(file => File.Exists(Path.Combine(Root, file)))
            .Order(StringComparer.Ordinal)
            .ToList();
        Assert.Contains("ProcessorDesk.sln", files);
        return files;
    }

    /// <summary>Committed files and new ones not ignored; null where the tree is no git work tree or git is missing.</summary>
    private static string[]? ListedByGit()
    {
        if (!Path.Exists(Path.Combine(Root, ".git")))
            return null;
        var start = new ProcessStartInfo("git", ["ls-files", "-z", "--cached", "--others", "--exclude-standard"])
        {
            WorkingDirectory = Root,
            RedirectStandardOutput = true,
        };
        try
        {
            using var git = Process.Start(start)!;
            var output = git.StandardOutput.ReadToEnd();
            git.WaitForExit();
            return git.ExitCode == 0 ? output.Split('\0', StringSplitOptions.RemoveEmptyEntries) : null;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }

    private static IEnumerable<string> ListedByFolder() =>
        Directory.EnumerateFiles(Root, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Root, file).Replace('\\', '/'))
            .Where(file => !file.Split('/').Any(s_madeFolders.Contains));
}
