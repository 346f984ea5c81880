namespace ProcessorDesk.Records;

/// <summary>Whose meat it is.</summary>
public sealed class Owner : IVersioned
{
    private Owner()
    {
    }

    public Owner(string name, string phone) => Describe(name, phone, null, null);

    public int Id { get; private set; }

    public string Name { get; private set; } = "";

    public string Phone { get; private set; } = "";

    /// <summary>The phone's digits alone, for finding by any writing of it.</summary>
    public string PhoneDigits { get; private set; } = "";

    public string? PostalAddress { get; private set; }

    public string? Email { get; private set; }

    /// <summary>Whether the owner wants the name on take-home packs; anonymous unless asked for.</summary>
    public bool NameOnPacks { get; private set; }

    public int Version { get; private set; }

    public void Describe(string name, string phone, string? postalAddress, string? email, bool nameOnPacks = false)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Name = name.Trim();
        Phone = phone.Trim();
        PhoneDigits = DigitsOf(phone);
        PostalAddress = Texts.OrNull(postalAddress);
        Email = Texts.OrNull(email);
        NameOnPacks = nameOnPacks;
    }

    public static string DigitsOf(string text) => string.Concat(text.Where(char.IsAsciiDigit));
}
