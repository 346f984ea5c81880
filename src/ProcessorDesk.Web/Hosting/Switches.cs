namespace ProcessorDesk.Web.Hosting;

/// <summary>The app's own switches, spelled so that the framework's command line takes them: <c>--demo</c> alone means true.</summary>
internal static class Switches
{
    public static string[] Spelled(string[] args) => [.. args.Select(arg => arg == "--demo" ? "--demo=true" : arg)];

    public static bool Demo(this IConfiguration configuration) =>
        bool.TryParse(configuration["demo"], out var demo) && demo;
}
